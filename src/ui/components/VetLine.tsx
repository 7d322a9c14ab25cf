import type { Vet } from '../../domain/state/house.ts';

/** Whom to call, beside a caution that leaves it to a vet. */
export const VetLine = ({ vet }: { readonly vet: Vet | undefined }) =>
  vet ? (
    <a class="pill" href={`tel:${vet.phone.replace(/[^+\d]/g, '')}`}>
      Call {vet.name}, {vet.phone}
    </a>
  ) : (
    <a class="pill" href="#/protocol/vet">
      Add your vet’s number
    </a>
  );
