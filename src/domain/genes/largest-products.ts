import { toNumber, type Fraction } from './fraction.ts';

/** A product over loci, one factor by locus and look, and its weight in the sum. */
export interface Product {
  readonly weight: Fraction;
  readonly factors: readonly (readonly Fraction[])[];
}

interface Node {
  readonly picks: readonly number[];
  readonly values: readonly number[];
  readonly bound: number;
}

/**
 * The largest entries of a table that is a sum of products, without writing the table out: a path
 * through the loci is followed only while its best possible end is the best of all. `sizes` is the
 * number of looks at each locus. `count` says how many entries are above zero.
 */
export function largestProducts(
  products: readonly Product[],
  sizes: readonly number[],
  most: number,
): { readonly best: readonly (readonly number[])[]; readonly count: number } {
  const live = products.filter(({ weight }) => weight.n > 0n);
  const factors = live.map((product) => product.factors.map((each) => each.map(toNumber)));
  // The best that the loci from here on can do, for each product.
  const ahead = factors.map((loci) =>
    loci.reduceRight<number[]>((best, each) => [Math.max(...each) * (best[0] ?? 1), ...best], [1]),
  );
  const nodeOf = (picks: readonly number[], values: readonly number[]): Node => ({
    picks,
    values,
    bound: values.reduce((total, value, n) => total + value * (ahead[n]?.[picks.length] ?? 0), 0),
  });
  const open = [
    nodeOf(
      [],
      live.map(({ weight }) => toNumber(weight)),
    ),
  ];
  const best: (readonly number[])[] = [];
  while (best.length < most) {
    const node = takeLargest(open);
    if (!node) break;
    const depth = node.picks.length;
    if (depth === sizes.length) {
      best.push(node.picks);
      continue;
    }
    for (let look = 0; look < (sizes[depth] ?? 0); look++) {
      const values = node.values.map((value, n) => value * (factors[n]?.[depth]?.[look] ?? 0));
      const next = nodeOf([...node.picks, look], values);
      if (next.bound > 0) put(open, next);
    }
  }
  return { best, count: countOf(live, sizes) };
}

/** Deeper first among equals, so that a table of equal chances is not opened all at once. */
const before = (a: Node, b: Node): boolean =>
  a.bound === b.bound ? a.picks.length > b.picks.length : a.bound > b.bound;

/** A binary heap. */
function put(heap: Node[], node: Node): void {
  let at = heap.push(node) - 1;
  while (at > 0) {
    const parent = (at - 1) >> 1;
    const above = heap[parent];
    if (!above || !before(node, above)) break;
    heap[at] = above;
    at = parent;
  }
  heap[at] = node;
}

function takeLargest(heap: Node[]): Node | undefined {
  const [top] = heap;
  const last = heap.pop();
  if (!top || !last || heap.length === 0) return top;
  let at = 0;
  for (;;) {
    const [left, right] = [heap[2 * at + 1], heap[2 * at + 2]];
    const [child, next] =
      right && left && before(right, left) ? [right, 2 * at + 2] : [left, 2 * at + 1];
    if (!child || !before(child, last)) break;
    heap[at] = child;
    at = next;
  }
  heap[at] = last;
  return top;
}

/** Entries that at least one product gives a chance, by the set of products still alive. */
function countOf(products: readonly Product[], sizes: readonly number[]): number {
  let paths = new Map<string, number>([[products.map(() => '1').join(''), 1]]);
  for (const [depth, size] of sizes.entries()) {
    const next = new Map<string, number>();
    for (const [alive, count] of paths) {
      for (let look = 0; look < size; look++) {
        const still = products
          .map(({ factors }, n) => {
            const goesOn = alive[n] === '1' && (factors[depth]?.[look]?.n ?? 0n) > 0n;
            return goesOn ? '1' : '0';
          })
          .join('');
        if (still.includes('1')) next.set(still, (next.get(still) ?? 0) + count);
      }
    }
    paths = next;
  }
  return [...paths.values()].reduce((total, count) => total + count, 0);
}
