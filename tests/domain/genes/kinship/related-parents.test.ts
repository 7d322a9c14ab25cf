import { expect, test } from 'vitest';
import { kinshipsIn } from '../../../../src/domain/genes/kinship/kinship.ts';
import { kinValues } from './kin-values.ts';
import { pedigree, type Row } from './lineages.ts';

test.each(kinValues)('%s: %d', (_, expected, text) => {
  const rows = text.split(' ').map((each): Row => {
    const [id = '', sire, dam] = each.split(/[:,]/);
    return [id, sire, dam];
  });
  expect(kinshipsIn(pedigree(...rows)).inbreeding('x').atLeast).toBe(expected);
});
