import { VetLine } from '../components/VetLine.tsx';
import { useView } from '../model.ts';

/** The keeper's own vet, as far as the desk has told. */
export function CallVet() {
  const status = useView('status', null);
  return status ? <VetLine vet={status.vet} /> : null;
}
