import { useContext, useEffect, useState } from 'preact/hooks';
import type { CalendarEntry } from '../../domain/calendar-file/entry.ts';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { nightWords } from '../night.ts';
import { RemindersContext, type Reminders, type RemindersState } from '../reminders.ts';
import { saveFile } from '../save-file.ts';
import { Page } from './Page.tsx';

/** Being reminded away from the page: by this device, and by the keeper's own calendar. */
export function RemindersScreen() {
  const status = useView('status', null);
  const isDemo = status?.collection === 'demo';
  return (
    <Page title="Reminders" back>
      <p class="note">
        A reminder is a help, not a guard. The phone decides when it wakes the app, and may skip an
        evening. Do not rely on it for an incubator.
      </p>
      {isDemo && (
        <p class="note">
          The demo is invented: it reminds nobody, and its days belong in no calendar. What its file
          would hold stands below.
        </p>
      )}
      {status && !isDemo && <OnThisDevice />}
      {status && <InTheCalendar isDemo={isDemo} />}
    </Page>
  );
}

const stateWords: Record<RemindersState, string> = {
  unable:
    'This browser cannot wake the app while it is closed. The calendar file below works everywhere.',
  blocked:
    'Notifications are blocked for this app. Allow them in the browser’s settings, or take the calendar file below.',
  'not-installed':
    'This browser wakes installed apps only. Install the app from the browser’s menu and open it from its icon, or take the calendar file below.',
  'not-ready': 'The app is still being put on this device. Try again in a minute.',
  off: 'Off. Turned on, one notification in the evening says what tonight asks, also while the app is closed.',
  on: 'On. Between noon and midnight, when the phone wakes the app, one notification says what tonight asks.',
};

function OnThisDevice() {
  const { failWith } = useModel();
  const load = useContext(RemindersContext);
  const [reminders, setReminders] = useState<Reminders>();
  const [state, setState] = useState<RemindersState>();

  useEffect(() => {
    load?.()
      .then(async (loaded) => {
        setState(await loaded.state());
        setReminders(loaded);
      })
      .catch(failWith);
  }, []);

  if (!reminders || !state) return null;
  const turn = (on: boolean) =>
    (on ? reminders.turnOn() : reminders.turnOff()).then(setState, failWith);
  return (
    <section class="stack">
      <h2>On this device</h2>
      <p role="status">{stateWords[state]}</p>
      {state !== 'unable' && (
        <p class="quiet small">
          {reminders.canNumberIcon
            ? 'The number on the app’s icon counts what is to be done.'
            : 'This device shows no number on the app’s icon.'}
        </p>
      )}
      {state === 'on' && <Slab onPress={() => void turn(false)}>Turn reminders off</Slab>}
      {['off', 'not-installed', 'not-ready'].includes(state) && (
        <Slab icon="tonight" kind="main" onPress={() => void turn(true)}>
          Turn reminders on
        </Slab>
      )}
    </section>
  );
}

function InTheCalendar({ isDemo }: { readonly isDemo: boolean }) {
  const { desk, failWith } = useModel();
  const entries = useView('calendar', null);
  if (!entries) return null;
  const save = async () => {
    try {
      const { fileName, text } = await desk.tell('calendarFile', null);
      await saveFile(fileName, text, 'text/calendar');
    } catch (error) {
      failWith(error);
    }
  };
  return (
    <section class="stack">
      <h2>In your calendar</h2>
      {entries.length === 0 ? (
        <p class="quiet">
          Nothing with a day is coming up. Pairings and quarantines will stand here.
        </p>
      ) : (
        <>
          <p class="quiet">
            A file for the calendar on your phone or computer, with alarms. Take it in again when
            things change: what it holds moves and is not doubled. What no longer holds stays until
            you delete it there.
          </p>
          {!isDemo && (
            <Slab icon="safe" onPress={() => void save()}>
              Save the calendar file
            </Slab>
          )}
          <ul class="plain-list" aria-label="What the file holds">
            {entries.map((entry) => (
              <li key={entry.uid}>
                <strong>{daysOf(entry)}</strong> {entry.title}
                {entry.kind === 'window' && entry.likelyDay !== undefined && (
                  <>, most likely {nightWords(entry.likelyDay)}</>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

const daysOf = ({ firstDay, lastDay }: CalendarEntry): string =>
  firstDay === lastDay ? nightWords(firstDay) : `${nightWords(firstDay)} – ${nightWords(lastDay)}`;
