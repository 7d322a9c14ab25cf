import type { GeneLine } from '../../domain/views/genes-view.ts';
import type { NamedKin } from '../../domain/views/lineage-view.ts';
import '../capture/forms.css';
import { lazy } from '../lazy.tsx';

const GeneTestForm = lazy(async () => (await import('./GeneTestForm.tsx')).GeneTestForm, null);
const OwnGeneForm = lazy(async () => (await import('./OwnGeneForm.tsx')).OwnGeneForm, null);
const ParentsForm = lazy(async () => (await import('./ParentsForm.tsx')).ParentsForm, null);
const TraitsForm = lazy(async () => (await import('./TraitsForm.tsx')).TraitsForm, null);
const YoungForm = lazy(async () => (await import('./YoungForm.tsx')).YoungForm, null);

export type GeneForm =
  | { readonly kind: 'traits' | 'parents' | 'test' | 'young' }
  | { readonly kind: 'own'; readonly name?: string };

/** The form asked for; each is fetched when it is first opened. */
export function GeneForms({
  form,
  of: { id, name },
  lines,
  onClose,
}: {
  readonly form: GeneForm;
  readonly of: NamedKin;
  readonly lines: readonly GeneLine[];
  readonly onClose: () => void;
}) {
  switch (form.kind) {
    case 'traits':
      return <TraitsForm id={id} name={name} onClose={onClose} />;
    case 'parents':
      return <ParentsForm id={id} name={name} onClose={onClose} />;
    case 'test':
      return <GeneTestForm id={id} name={name} lines={lines} onClose={onClose} />;
    case 'young':
      return <YoungForm id={id} name={name} onClose={onClose} />;
    case 'own':
      return <OwnGeneForm name={form.name ?? ''} onClose={onClose} />;
  }
}
