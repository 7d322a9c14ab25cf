import type { Catalogue } from '../catalogue.ts';
import { cautions } from './cautions.ts';
import { groups } from './groups.ts';
import { recessives } from './recessives.ts';
import { singleGenes } from './single-genes.ts';
import { unclear } from './unclear.ts';

/** What is known of *Python regius*. Ids are never changed: records hold them. */
export const ballPython: Catalogue = {
  loci: [...singleGenes, ...groups, ...recessives],
  cautions,
  unclear,
};
