/** Why two are put together in spite of what weighs against it, in the keeper's words. */
export const ReasonField = ({
  reason,
  onReason,
}: {
  readonly reason: string;
  readonly onReason: (reason: string) => void;
}) => (
  <label>
    Why these two, in spite of it?
    <input
      value={reason}
      maxLength={300}
      autocomplete="off"
      onInput={({ currentTarget }) => onReason(currentTarget.value)}
    />
  </label>
);
