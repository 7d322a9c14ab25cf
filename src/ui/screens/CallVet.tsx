import { VetLine } from '../components/VetLine.tsx';
import { useStatus } from '../model.ts';

/** The keeper's own vet, as far as the desk has told. */
export function CallVet() {
  const status = useStatus();
  return status ? <VetLine vet={status.vet} /> : null;
}
