import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './Icon.tsx';

interface SlabProps {
  readonly icon?: IconName;
  readonly children: ComponentChildren;
  readonly under?: string | undefined;
  readonly kind?: 'main' | 'warn' | undefined;
  readonly pressed?: boolean | undefined;
  readonly disabled?: boolean | undefined;
  readonly onPress: () => void;
}

/** The button of this app: a mark, a word, and what it will write under it. */
export const Slab = ({ icon, children, under, kind, pressed, disabled, onPress }: SlabProps) => (
  <button
    type="button"
    class={`slab${kind ? ` slab-${kind}` : ''}`}
    aria-pressed={pressed}
    disabled={disabled ?? false}
    onClick={onPress}
  >
    {icon && <Icon name={icon} />}
    <span>
      {children}
      {under !== undefined && <small>{under}</small>}
    </span>
  </button>
);

/** The same, leading somewhere. */
export const SlabLink = ({
  icon,
  href,
  children,
  under,
  kind,
}: Omit<SlabProps, 'onPress' | 'pressed' | 'disabled'> & { readonly href: string }) => (
  <a class={`slab${kind ? ` slab-${kind}` : ''}`} href={href}>
    {icon && <Icon name={icon} />}
    <span>
      {children}
      {under !== undefined && <small>{under}</small>}
    </span>
  </a>
);
