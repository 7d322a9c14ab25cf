import { useEffect, useState } from 'preact/hooks';
import { acts, type Act } from '../../domain/rules/rule.ts';
import { actWords } from '../../domain/views/act-words.ts';
import type { Stop, TonightView } from '../../domain/views/tonight-view.ts';
import { AskNote } from '../components/AskNote.tsx';
import { Reasons } from '../components/Because.tsx';
import { Icon, type IconName } from '../components/Icon.tsx';
import { SexMark } from '../components/SexMark.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { FIRST_STOPS } from '../last-seen.ts';
import { nightWords } from '../night.ts';
import { lazy } from '../lazy.tsx';
import { useTonight } from '../tonight.ts';
import { CallVet } from './CallVet.tsx';
import { Page } from './Page.tsx';

const EggChores = lazy(async () => (await import('../hatchery/EggChores.tsx')).EggChores, null);

const MovesTonight = lazy(
  async () => (await import('../rotation/MovesTonight.tsx')).MovesTonight,
  null,
);

const actIcons: Record<Act, IconName> = {
  feed: 'feed',
  settle: 'overnight',
  'take-out': 'out',
  weigh: 'weigh',
  look: 'alarm',
  scan: 'follicles',
  pair: 'pair',
  'look-ovulation': 'look',
  'look-eggs': 'eggs',
  'nest-box': 'nest',
  call: 'alarm',
  check: 'alarm',
};

/** Few enough to be drawn between two taps on a slow phone. */
const MORE_STOPS = 60;

/**
 * How many lines to draw of a list: first those that can be seen, then more after each that have
 * been painted, so that the first lines and the first tap need not wait for the last.
 */
function useGrowing(lines: number | undefined): number {
  const [drawn, setDrawn] = useState(FIRST_STOPS);
  useEffect(() => {
    const isAll = lines === undefined || (drawn > FIRST_STOPS && drawn >= lines);
    if (isAll) return undefined;
    const timer = setTimeout(() => setDrawn(drawn + MORE_STOPS), 0);
    return () => clearTimeout(timer);
  }, [lines, drawn]);
  return drawn;
}

/** What to do tonight, in the order one walks. */
export function TonightScreen() {
  const { view, isLastSeen } = useTonight();
  const drawn = useGrowing(view?.stops.length);
  const isSettled = drawn > FIRST_STOPS;
  if (!view) return <Page title="Tonight" />;
  const first = view.stops.find(({ tub }) => tub !== undefined);
  return (
    <Page
      title="Tonight"
      beside={
        <>
          Night of {nightWords(view.night)}
          {isLastSeen && (
            // On a line of its own, so that nothing moves under a thumb when it goes.
            <>
              <br />
              as last worked out
            </>
          )}
        </>
      }
    >
      <Summary view={view} />
      {view.rooms.map((alarm) => (
        <AskNote
          icon="alarm"
          isAlarm
          key={alarm.room + alarm.rule}
          href={`#/room/${alarm.room}`}
          words={`${alarm.name}: ${alarm.asks}`}
          chore={alarm}
        />
      ))}
      {view.alarms.map((chore) => (
        <AskNote
          icon="alarm"
          isAlarm
          key={chore.animal + chore.rule}
          href={`#/snake/${chore.animal}`}
          words={chore.asks}
          chore={chore}
        >
          {chore.vet && <CallVet />}
        </AskNote>
      ))}
      {isSettled && <EggChores />}
      {isSettled && <MovesTonight />}
      {first && (
        <SlabLink icon="round" kind="main" href="#/round" under={`first ${first.position}`}>
          Start the round
        </SlabLink>
      )}
      {view.stops.length === 0 && view.animals > 0 && (
        <p class="note">Nothing to do tonight. Good night to you both.</p>
      )}
      <StopList stops={view.stops.slice(0, drawn)} />
      {view.waiting.length > 0 && (
        <Unfolds kind="waiting" summary={`Not tonight: ${view.waiting.length}, with the reason`}>
          {() => <StopList stops={view.waiting} />}
        </Unfolds>
      )}
      <a class="row-link" href="#/feeding">
        <Icon name="feed" /> Feeding, and what to thaw
      </a>
      <a class="row-link" href="#/season">
        <Icon name="eggs" /> The season at a glance
      </a>
    </Page>
  );
}

const Summary = ({ view }: { readonly view: TonightView }) => (
  <ul class="summary">
    {acts
      .filter((act) => view.counts[act] > 0)
      .map((act) => (
        <li key={act}>
          <Icon name={actIcons[act]} />
          <strong class="number">{view.counts[act]}</strong> {actWords[act]}
        </li>
      ))}
  </ul>
);

function StopList({ stops }: { readonly stops: readonly Stop[] }) {
  const racks = new Map<string, Stop[]>();
  for (const stop of stops) racks.set(stop.rackName, [...(racks.get(stop.rackName) ?? []), stop]);
  return (
    <>
      {[...racks].map(([rackName, inRack]) => (
        <section key={rackName} class="rack-stops">
          <h2>{inRack[0]?.rack ? `Rack ${rackName}` : rackName}</h2>
          <ol>
            {inRack.map((stop) => (
              <StopLine key={stop.animal} stop={stop} />
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

const StopLine = ({ stop }: { readonly stop: Stop }) => (
  <li class="stop">
    <a class="stop-link" href={`#/snake/${stop.animal}`}>
      <span class="plate">{stop.position}</span>
      <span class="stop-who">
        <strong>{stop.name}</strong> <SexMark sex={stop.sex} />
        {stop.chores.map((chore) => (
          <span
            key={chore.rule}
            class={`stop-chore${chore.blocked === undefined ? '' : ' stop-blocked'}`}
          >
            <Icon name={chore.blocked === undefined ? actIcons[chore.act] : 'hold'} />
            <span>
              {chore.asks}
              {chore.blocked !== undefined && <>: {chore.blocked}</>}
              {chore.state === 'overdue' && chore.blocked === undefined && (
                <span class="overdue">overdue</span>
              )}
            </span>
          </span>
        ))}
      </span>
    </a>
    <Unfolds
      kind="why"
      summary={
        <>
          Why<span class="hidden-words"> {stop.name}</span>
        </>
      }
    >
      {() => stop.chores.map((chore) => <Reasons key={chore.rule} chore={chore} />)}
    </Unfolds>
  </li>
);
