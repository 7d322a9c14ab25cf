import { Icon } from './Icon.tsx';

/** A shape for the eye and a word for the ear. */
export const SexMark = ({ sex }: { readonly sex: 'male' | 'female' | 'unknown' }) => (
  <span class="mark">
    <Icon name={sex} />
    <span class="hidden-words">{sex === 'unknown' ? 'sex not known' : sex}</span>
  </span>
);
