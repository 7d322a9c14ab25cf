import type { AnimalId } from '../core/ids.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import { knownParent } from '../genes-book/known-parent.ts';
import { pairCautions } from '../genes/pair-cautions.ts';
import { familyTree } from '../lineage/family-tree.ts';
import type { Picture } from '../picture/picture.ts';
import { cautionLine, kinCaution, reasonFor, type CautionLine } from './caution-words.ts';
import { kinWords } from './kin-words.ts';
import { namedKin } from './lineage-view.ts';

/** What speaks against one mate, where it weighs. */
export interface MateWarning {
  readonly mate: AnimalId;
  readonly cautions: readonly CautionLine[];
  /** A reason given before. */
  readonly reasoned: string | undefined;
}

/** The weightier cautions of an animal with each living mate; mates without any are left out. */
export function pairWarningsView(id: AnimalId, picture: Picture): readonly MateWarning[] {
  const self = picture.animal(id);
  if (!self || self.sex === 'unknown') return [];
  const book = genesBook(picture);
  const { kin } = familyTree(picture);
  const isDam = self.sex === 'female';
  const own = knownParent(id, self.sex, book);
  const other = isDam ? 'male' : 'female';
  return picture
    .living()
    .filter((each) => each.sex === other && each.id !== id)
    .flatMap((mate): readonly MateWarning[] => {
      const theirs = knownParent(mate.id, other, book);
      const [dam, sire] = isDam ? [own, theirs] : [theirs, own];
      const pair = isDam ? { female: id, male: mate.id } : { female: mate.id, male: id };
      const words = kinWords(
        kin.between(pair.female, pair.male),
        'pair',
        (each) => namedKin(each, picture).name,
      );
      const cautions = [
        ...pairCautions(dam, sire, book.catalogue).map(cautionLine),
        ...kinCaution(words),
      ].filter(({ weight }) => weight !== 'worth knowing');
      if (cautions.length === 0) return [];
      return [{ mate: mate.id, cautions, reasoned: reasonFor(pair, picture) }];
    });
}
