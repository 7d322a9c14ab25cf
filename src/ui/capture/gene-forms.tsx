import { lazy } from '../lazy.tsx';
import type { FormProps } from './form-props.ts';

const GeneTestForm = lazy(
  async () => (await import('../genes/GeneTestForm.tsx')).GeneTestForm,
  null,
);
const YoungForm = lazy(async () => (await import('../genes/YoungForm.tsx')).YoungForm, null);

// Forms of the snake's own page, at its tub. They are rare, so they are fetched when first opened.

export const GeneTestAtTub = ({ occupant: { id, name }, onClose }: FormProps) => (
  <GeneTestForm id={id} name={name} onClose={onClose} />
);

export const YoungAtTub = ({ occupant: { id, name }, onClose }: FormProps) => (
  <YoungForm id={id} name={name} onClose={onClose} />
);
