export interface PrintBarProps {
  readonly count: number;
  readonly pages: number;
  readonly roll: boolean;
  readonly onPrint: () => void;
}

/** The button that prints, always in reach of the thumb, and the one setting that spoils labels. */
export function PrintBar({ count, pages, roll, onPrint }: PrintBarProps) {
  const labels = count === 1 ? '1 label' : `${count} labels`;
  const sheets = pages === 1 ? '1 sheet' : `${pages} sheets`;
  return (
    <div class="labels-bar">
      <p>In the print window: 100 %, no scaling.</p>
      <button type="button" class="labels-main" disabled={count === 0} onClick={onPrint}>
        Print {roll ? labels : `${labels} on ${sheets}`}
      </button>
    </div>
  );
}
