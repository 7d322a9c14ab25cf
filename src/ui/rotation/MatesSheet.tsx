import type { MateCell } from '../../domain/views/mates-view.ts';
import type { BoardRow } from '../../domain/views/rotation-view.ts';
import { CautionList } from '../choosing/CautionList.tsx';
import '../choosing/choosing.css';
import '../capture/forms.css';
import { Sheet } from '../components/Sheet.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel, useView } from '../model.ts';
import { remembered } from '../remember.ts';
import { BoardReason } from './BoardReason.tsx';

const USUAL_YOUNG = 6;

const choices = [
  ['first', 'First'],
  ['reserve', 'Reserve'],
  ['none', 'No'],
] as const;

/** Every male against one female, and the keeper's choice among them. */
export function MatesSheet({
  female,
  goal,
  onClose,
}: {
  readonly female: BoardRow;
  readonly goal: string;
  readonly onClose: () => void;
}) {
  const young = Number(remembered('choose-young') ?? USUAL_YOUNG);
  const cells = useView('mates', { female: female.id, goal, young });
  return (
    <Sheet title={`Males for ${female.name}`} onClose={onClose}>
      {cells ? (
        <ol class="stack">
          {cells.map((cell) => (
            <Mate key={cell.male} cell={cell} female={female} />
          ))}
        </ol>
      ) : (
        <p aria-busy="true">Reckoning the odds…</p>
      )}
    </Sheet>
  );
}

function Mate({ cell, female }: { readonly cell: MateCell; readonly female: BoardRow }) {
  const { write } = useModel();
  const choose = (choice: MateCell['choice'], word: string) =>
    void write({
      drafts: [{ type: 'pair-wanted', female: female.id, male: cell.male, choice }],
      words: `${cell.name} for ${female.name}: ${word.toLowerCase()}`,
    });
  return (
    <li class="pair-card" aria-label={cell.name}>
      <p class="board-head">
        <strong>{cell.name}</strong>
        <span class="quiet small number">
          {[cell.position, cell.mass, cell.traits].filter((each) => each !== undefined).join(' · ')}
        </span>
      </p>
      {cell.odds !== undefined && <p class="number">{cell.odds}</p>}
      <p class="small">{cell.kin}</p>
      {cell.notReady.map((says) => (
        <p class="small" key={says}>
          <strong>Not ready:</strong> {says}
        </p>
      ))}
      <div class="chips" role="group" aria-label={`Choice of ${cell.name}`}>
        {choices.map(([choice, word]) => (
          <button
            type="button"
            class="pill"
            key={choice}
            aria-pressed={cell.choice === choice}
            onClick={() => choose(choice, word)}
          >
            {word}
          </button>
        ))}
      </div>
      {cell.cautions.length > 0 && (
        <Unfolds summary={`Cautions: ${cell.cautions.length}`}>
          {() => <CautionList cautions={cell.cautions} />}
        </Unfolds>
      )}
      {cell.missing.length > 0 && <BoardReason cell={cell} female={female} />}
    </li>
  );
}
