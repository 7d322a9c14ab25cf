import { readTypedCode } from '../core/code.ts';
import type { AnimalId, TubId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';

export interface Hit {
  readonly animal?: AnimalId | undefined;
  readonly tub?: TubId | undefined;
  readonly title: string;
  readonly sex?: Animal['sex'] | undefined;
  readonly detail: string;
  readonly gone: boolean;
}

const MOST_HITS = 60;
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Animals and tubs by label code, position, name or trait; best first. Empty text lists all. */
export function findView(typed: string, picture: Picture): readonly Hit[] {
  const text = plain(typed.trim());
  const code = readTypedCode(typed);
  if (code.ok) {
    const target = picture.label(code.value)?.to;
    if (target?.kind === 'tub') return tubHits(target.tub, picture);
    const animal = target?.kind === 'animal' ? picture.animal(target.animal) : undefined;
    if (animal) return [animalHit(animal, picture)];
  }
  const scored = picture.animals().flatMap((animal) => {
    const score = scoreOf(animal, text, picture);
    return score === undefined ? [] : [{ score, animal }];
  });
  const animals = scored
    .toSorted(
      (a, b) =>
        Number(a.animal.gone !== undefined) - Number(b.animal.gone !== undefined) ||
        a.score - b.score ||
        (plain(a.animal.name) < plain(b.animal.name) ? -1 : 1),
    )
    .map(({ animal }) => animalHit(animal, picture));
  const emptyTubs = picture
    .walk()
    .filter(
      ({ id }) =>
        text !== '' &&
        plain(picture.position(id) ?? '') === text.replace(/\s/g, '') &&
        picture.inTub(id).length === 0,
    )
    .flatMap(({ id }) => tubHits(id, picture));
  return [...emptyTubs, ...animals].slice(0, MOST_HITS);
}

function scoreOf(animal: Animal, text: string, picture: Picture): number | undefined {
  if (text === '') return 0;
  const position = plain(picture.position(picture.whereIs(animal)) ?? '');
  const name = plain(animal.name);
  if (position === text.replace(/\s/g, '')) return 0;
  if (name === text) return 1;
  if (name.startsWith(text)) return 2;
  if (name.includes(text)) return 3;
  if (position !== '' && position.startsWith(text.replace(/\s/g, ''))) return 4;
  return plain(animal.traits ?? '').includes(text) ? 5 : undefined;
}

function tubHits(tub: TubId, picture: Picture): readonly Hit[] {
  const present = picture.inTub(tub);
  return present.length > 0
    ? present.map((animal) => animalHit(animal, picture))
    : [{ tub, title: picture.position(tub) ?? 'Tub', detail: 'empty tub', gone: false }];
}

function animalHit(animal: Animal, picture: Picture): Hit {
  const position = picture.position(picture.whereIs(animal));
  return {
    animal: animal.id,
    tub: picture.whereIs(animal),
    title: animal.name || 'Unnamed',
    sex: animal.sex,
    detail: [animal.gone?.how ?? position ?? 'no tub', animal.sex, animal.traits]
      .filter((part) => part !== undefined && part !== 'unknown')
      .join(' · '),
    gone: animal.gone !== undefined,
  };
}
