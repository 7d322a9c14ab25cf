import type { AnimalId } from '../core/ids.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import { knownParent } from '../genes-book/known-parent.ts';
import { pairCautions } from '../genes/pair-cautions.ts';
import { closeKin } from '../lineage/close-kin.ts';
import { familyTree } from '../lineage/family-tree.ts';
import type { Picture } from '../picture/picture.ts';
import { againstPairing } from '../rules/pairing-block.ts';

/** Something for which two are planned only with the keeper's recorded reason. */
export interface AskedReason {
  /** As it is named in the record of the reason. */
  readonly id: string;
  readonly says: string;
}

/** What asks for a reason, whether there is one or not. Sources: readySize, recovery, closeKin, genes. */
export function reasonsAskedFor(
  { male, female }: { readonly male: AnimalId; readonly female: AnimalId },
  picture: Picture,
): readonly AskedReason[] {
  const [he, she] = [picture.animal(male), picture.animal(female)];
  if (!he || !she) return [];
  const asked: AskedReason[] = [];
  for (const [id, snake] of [['his-fitness', he] as const, ['her-fitness', she] as const]) {
    const [against] = againstPairing(snake, picture.facts);
    if (against !== undefined) asked.push({ id, says: `${snake.name}: ${against}` });
  }
  const kin = familyTree(picture).kin.between(female, male);
  const most = kin.atMost ?? kin.atLeast;
  if (most >= closeKin.veryClose) {
    const percent = Math.round(most * 1_000) / 10;
    asked.push({
      id: 'close-kin',
      says: `Close kin: their young would be inbred by ${percent} %, 25 % is full siblings.`,
    });
  }
  const book = genesBook(picture);
  const [dam, sire] = [knownParent(female, 'female', book), knownParent(male, 'male', book)];
  for (const { caution } of pairCautions(dam, sire, book.catalogue)) {
    if (caution.weight !== 'worth knowing') asked.push({ id: caution.id, says: caution.message });
  }
  return asked;
}

/** What asks for a reason and was not in any that was given for the two. */
export function unreasonedFor(
  pair: { readonly male: AnimalId; readonly female: AnimalId },
  picture: Picture,
): readonly AskedReason[] {
  const asked = reasonsAskedFor(pair, picture);
  if (asked.length === 0) return [];
  const { ledger } = picture;
  const given = new Set(
    ledger
      .history(pair.female)
      .flatMap((event) =>
        event.type === 'pairing-reasoned' &&
        event.male === pair.male &&
        event.female === pair.female &&
        ledger.stands(event.id)
          ? event.cautions
          : [],
      ),
  );
  return asked.filter(({ id }) => !given.has(id));
}
