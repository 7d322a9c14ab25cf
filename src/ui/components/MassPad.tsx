import { massUnit, readMass, setMassUnit } from '../mass-unit.ts';
import { NumberPad } from './NumberPad.tsx';

interface MassPadProps {
  readonly label: string;
  /** As typed: "1640" in grams, "57.8" or "3 lb 9.8" in ounces. */
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly doneLabel: string;
  readonly onDone: () => void;
  readonly before?: string | undefined;
  /** Where more than the number shown decides. */
  readonly canBeDone?: boolean | undefined;
}

/** "3 lb 9.8 oz", as it is being typed. */
export const typedMass = (typed: string): string => `${typed} ${massUnit()}`;

/** The number pad for a mass in the keeper's unit. Pounds, if any, are typed first. */
export function MassPad({ typed, onType, before, canBeDone, ...pad }: MassPadProps) {
  const unit = massUnit();
  const [pounds, ounces = ''] = typed.includes(' lb ') ? typed.split(' lb ') : [undefined, typed];
  const read = readMass(typed);
  const typeOunces = (next: string): void => {
    if (pounds === undefined) onType(next);
    else if (ounces === '' && next === '') onType(pounds);
    else onType(`${pounds} lb ${next}`);
  };
  return (
    <div class="stack">
      <NumberPad
        {...pad}
        unit={pounds === undefined ? unit : `oz after ${pounds} lb`}
        decimals
        before={before}
        typed={ounces}
        onType={typeOunces}
        canBeDone={canBeDone ?? read !== undefined}
      />
      <div class="chips">
        {unit === 'oz' && (
          <button
            type="button"
            class="pill"
            disabled={pounds !== undefined || ounces === ''}
            onClick={() => onType(`${ounces} lb `)}
          >
            That was lb
          </button>
        )}
        <button
          type="button"
          class="pill"
          onClick={() => void setMassUnit(unit === 'g' ? 'oz' : 'g').catch(() => undefined)}
        >
          Weigh in {unit === 'g' ? 'ounces' : 'grams'}
        </button>
      </div>
      {unit === 'oz' && read && <p class="small quiet">Kept in grams: {read.massG} g.</p>}
    </div>
  );
}
