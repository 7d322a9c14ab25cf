import type { PairLine, Placed } from '../../domain/views/choose-view.ts';
import { Icon } from '../components/Icon.tsx';
import { SexMark } from '../components/SexMark.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { KinLine } from '../lineage/KinLine.tsx';
import '../lineage/lineage.css';
import { PairCautions } from './PairCautions.tsx';

/** One possible pairing: its chance first, then what stands against it, then how it was reckoned. */
export const PairCard = ({
  pair,
  limits,
}: {
  readonly pair: PairLine;
  readonly limits: string;
}) => (
  <li class="pair-card">
    <p class="pair-head">
      <strong class="pair-chance number">{pair.chance}</strong>
      <span>
        <Parent who={pair.male} />
        <Parent who={pair.female} />
      </span>
    </p>
    {!pair.isSuggested && <p class="pair-not">Not suggested: see the cautions.</p>}
    <p class="small">{pair.way}</p>
    {pair.notReady.map(({ name, says }) => (
      <p class="small" key={name}>
        <strong>{name} not ready:</strong> {says.join(' ')}
      </p>
    ))}
    <KinLine kin={pair.kin} limits={limits} />
    <PairCautions pair={pair} />
    <a class="row-link" href={`#/pair/${pair.female.id}/${pair.male.id}`}>
      <Icon name="eggs" /> All that the young can be
    </a>
    <Unfolds summary="The odds">
      {() => (
        <div class="because">
          {pair.odds.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <p>Young are counted as hatched, not as laid.</p>
        </div>
      )}
    </Unfolds>
  </li>
);

const Parent = ({ who: { id, name, sex, position, traits } }: { readonly who: Placed }) => (
  <span class="pair-parent">
    <a href={`#/animal/${id}`}>
      {name} <SexMark sex={sex} />
    </a>
    <span class="quiet small number">
      {[position, traits].filter((each) => each !== undefined).join(' · ')}
    </span>
  </span>
);
