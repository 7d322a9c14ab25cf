import { expect, test } from 'vitest';
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND, showGrams } from '../../../src/domain/core/units.ts';

// NIST Special Publication 811 (2008), Appendix B.8: ounce (avoirdupois) 2.834 952 E−02 kg and
// pound (avoirdupois) 4.535 924 E−01 kg, there rounded to seven figures; exact: 0.453 592 37 kg.
test('an ounce and a pound are what the standard says, and sixteen of one make the other', () => {
  expect(GRAMS_PER_OUNCE).toBeCloseTo(28.349_52, 5);
  expect(GRAMS_PER_POUND).toBe(453.592_37);
  expect(GRAMS_PER_OUNCE * 16).toBe(GRAMS_PER_POUND);
});

test.each([
  { massG: 62.5, shown: '62.5\u00A0g' },
  { massG: 62, shown: '62\u00A0g' },
  { massG: 1640, shown: '1,640\u00A0g' },
  { massG: 453.592_37, shown: '454\u00A0g' },
])('$massG is shown as $shown', ({ massG, shown }) => {
  expect(showGrams(massG)).toBe(shown);
});
