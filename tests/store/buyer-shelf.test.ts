import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import {
  createBuyerShelf,
  createMemoryBuyers,
  type BuyerShelf,
} from '../../src/store/buyer-shelf.ts';
import { readBuyers, writeBuyers } from '../../src/store/buyers-file.ts';
import type { Buyer } from '../../src/domain/sale/buyer.ts';
import { day } from '../make.ts';
import { buyerId } from '../make-ids.ts';
import { textFile } from './text-file.ts';

const since = day('2026-11-24');
const ada: Buyer = { id: buyerId(1), name: 'Ada Rook', contact: '01632 960221', since };
const tam: Buyer = { id: buyerId(2), name: 'Tam Brill', since };

describe.each<[string, () => BuyerShelf]>([
  ['in memory', createMemoryBuyers],
  ['in IndexedDB', () => createBuyerShelf(crypto.randomUUID())],
])('buyers %s', (_where, open) => {
  test('are kept, written anew under the same number, and erased', async () => {
    const shelf = open();
    await shelf.keep(ada);
    await shelf.keep(tam);
    await shelf.keep({ ...ada, name: 'Ada R. Rook' });
    expect((await shelf.all()).map(({ name }) => name).toSorted()).toEqual([
      'Ada R. Rook',
      'Tam Brill',
    ]);
    await shelf.erase(ada.id);
    expect(await shelf.all()).toEqual([tam]);
    await shelf.erase(ada.id);
    await shelf.clear();
    expect(await shelf.all()).toEqual([]);
  });
});

test('erased on one tab, it is gone for the next one who opens the same', async () => {
  const name = crypto.randomUUID();
  const shelf = createBuyerShelf(name);
  await shelf.keep(ada);
  await shelf.erase(ada.id);
  expect(await createBuyerShelf(name).all()).toEqual([]);
});

describe('a file of buyers', () => {
  test('is read back as it was written', async () => {
    const text = writeBuyers('1MK5RBBG0006G0DE9', [ada, tam]);
    expect(await readBuyers(textFile(text), '1MK5RBBG0006G0DE9')).toEqual({
      ok: true,
      value: [ada, tam],
    });
  });

  test.each([
    ['of another collection', writeBuyers('other', [ada]), 'another-collection'],
    ['that is a backup', '{"format":"nightdrop-log","version":1}\n{}\n', 'not-buyers'],
    ['that is a picture', '\u00ff\u00d8', 'not-buyers'],
    [
      'with more in it than a name and a contact',
      '{"format":"nightdrop-buyers","version":1,"collection":"own","buyers":[{"id":"b-00000000000100000","name":"A","since":"2026-11-24","born":"1990"}]}',
      'not-buyers',
    ],
  ])('%s is turned away', async (_what, text, code) => {
    expect(await readBuyers(textFile(text), 'own')).toMatchObject({
      ok: false,
      problem: { code },
    });
  });
});
