import type { ComponentChildren } from 'preact';
import { Because, type Reasoned } from './Because.tsx';
import { Icon, type IconName } from './Icon.tsx';

/** What a rule asks for, with its reason at the line's end and what helps with it below. */
export const AskNote = ({
  icon,
  words,
  chore,
  isAlarm,
  href,
  children,
}: {
  readonly icon: IconName;
  readonly words: ComponentChildren;
  readonly chore: Reasoned;
  readonly isAlarm: boolean;
  /** Where it can be done, when not here. */
  readonly href?: string | undefined;
  readonly children?: ComponentChildren;
}) => {
  const line = (
    <>
      <Icon name={icon} />
      <strong>{words}</strong>
    </>
  );
  return (
    <div class={`note ask${isAlarm ? ' note-warn' : ''}`}>
      {href === undefined ? (
        <p class="alarm-line">{line}</p>
      ) : (
        <a class="alarm-line" href={href}>
          {line}
        </a>
      )}
      <Because chore={chore} />
      {children}
    </div>
  );
};
