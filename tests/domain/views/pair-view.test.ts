import { describe, expect, it } from 'vitest';
import { pairView, type PairAsk } from '../../../src/domain/views/pair-view.ts';
import { pairWarningsView } from '../../../src/domain/views/pair-warnings-view.ts';
import { youngView } from '../../../src/domain/views/young-view.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId, clutchId, tubId } from '../../make-ids.ts';
import { bredFrom, counted, snake } from '../genes-book/make-book.ts';

const words = (text: string) => ({ kind: 'words', text }) as const;
const own = (n: number) => ({ kind: 'snake', id: animalId(n) }) as const;
const nobody = aPicture([]);
const imagined = (female: string, male: string, rest: Partial<PairAsk> = {}) =>
  pairView({ female: words(female), males: [words(male)], young: 6, wish: '', ...rest }, nobody);

// Mendel's ratios, and the trade's "66 %" for two of three.
describe('an imagined pair', () => {
  it('gives looks with chances, carriers and what a clutch holds', () => {
    const { looks, cautions } = imagined('het Clown', 'het Clown');
    expect(cautions).toEqual([]);
    expect(looks.map(({ name, chance, expected }) => [name, chance, expected])).toEqual([
      ['Normal', '3/4 (75 %)', '4.5'],
      ['Clown', '1/4 (25 %)', '1.5'],
    ]);
    expect(looks[0]?.writes).toEqual(['66% het Clown']);
    // 1 − (3/4)^6 = 0.822; (3/4)^9 = 0.075 is the first below a tenth.
    expect(looks[1]?.odds).toContain('At least one in 6 hatched young: 82 %. None: 18 %.');
    expect(looks[1]?.odds).toContain('For 9 in 10 it takes 9 hatched young.');
  });

  it('says what is out of reach and why', () => {
    const { wish } = imagined('66% het Clown', 'Clown', { wish: 'clown' });
    expect(wish?.kind === 'odds' && wish.says.join(' ')).toContain(
      '9 in 10 is not reachable: however many hatch, the chance never passes 2/3 (67 %)',
    );
    const not = imagined('Normal', 'Clown', { wish: 'clown' });
    expect(not.wish?.kind === 'odds' && not.wish.says.join(' ')).toContain(
      'these parents cannot give it.',
    );
    expect(imagined('Normal', 'Normal', { wish: 'clonw' }).wish?.kind).toBe('not understood');
  });

  it('counts what does not live as eggs lost', () => {
    const { lost, looks } = imagined('Spider', 'Spider');
    expect(lost).toContain('1/4 (25 %) of the eggs are lost');
    expect(lost).toContain('it takes 8 eggs');
    expect(looks.map(({ name, chance }) => [name, chance])).toEqual([
      ['Spider', '2/3 (67 %)'],
      ['Normal', '1/3 (33 %)'],
    ]);
  });

  it('of several possible sires is one of theirs; without any it is hers alone', () => {
    const two = imagined('Clown', '', { males: [words('Clown'), words('Normal')] });
    // One father for all: half the clutches are all Clown.
    expect(two.looks.find(({ name }) => name === 'Clown')?.odds[0]).toContain('50 %. None: 50 %');
    const alone = imagined('het Clown', '', { males: [] });
    expect(alone.looks.map(({ name, share }) => [name, share])).toEqual([
      ['Normal', 0.5],
      ['Clown', 0.5],
    ]);
    expect(alone.assumed.join(' ')).toContain('daughters only');
  });

  it('tells what its words did not say', () => {
    const { female } = imagined('Clonw', 'Normal');
    expect(female.reading?.unknown.map((each) => each.words)).toEqual(['Clonw']);
  });
});

describe('a pair of the collection', () => {
  const family = [
    snake(1, 'female', 'Spider'),
    snake(2, 'male', 'Spider'),
    snake(3, 'male', ''),
    bredFrom(3, 1, 2),
  ];

  it('shows its cautions with weight, grade and source, its kin, and the reason given', () => {
    const reason = anEvent('pairing-reasoned', {
      female: animalId(1),
      male: animalId(3),
      cautions: ['spider-twice'],
      reason: 'as an example',
    });
    const ask = { female: own(1), males: [own(3)], young: 6, wish: '' };
    const { cautions, kin, reasoned } = pairView(ask, aPicture([...family, reason]));
    expect(cautions[0]).toMatchObject({ id: 'spider-twice', weight: 'grave' });
    expect(cautions[0]?.grade).toBe('trade consensus');
    expect(cautions[0]?.evidence.length).toBeGreaterThan(1);
    // A mother and her son: F of the young 1/4 (Wright 1922).
    expect(kin[0]?.words.figure).toContain('1/4');
    expect(cautions.map(({ id }) => id)).toContain('close-kin');
    expect(reasoned).toBe('as an example');
  });

  it('is warned of at the tub, and one that nothing weighs against is not', () => {
    const picture = aPicture([...family, snake(4, 'male', 'Normal'), snake(5, 'female', 'Normal')]);
    const warned = pairWarningsView(animalId(1), picture);
    expect(warned.map(({ mate }) => mate)).toEqual([animalId(2), animalId(3), animalId(4)]);
    expect(pairWarningsView(animalId(4), picture).map(({ mate }) => mate)).toEqual([animalId(1)]);
  });

  it('offers her clutches to be counted, with the males that were in with her', () => {
    const picture = aPicture([
      snake(1, 'female'),
      snake(2, 'male'),
      anEvent('introduced', {
        male: animalId(2),
        female: animalId(1),
        tub: tubId(1),
        at: nightsAgo(150),
      }),
      anEvent('laid', { animal: animalId(1), clutch: clutchId(1), at: nightsAgo(90) }),
      counted(1, 1, [2], { Normal: 3 }),
    ]);
    const [clutch] = youngView(animalId(1), picture)?.clutches ?? [];
    expect(clutch?.met.map(({ id }) => id)).toEqual([animalId(2)]);
    expect(clutch?.counted?.counts).toEqual([{ looks: 'Normal', count: 3 }]);
  });
});
