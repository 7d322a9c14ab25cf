/**
 * Mass on the scale of one of its powers, or on that of its log where that is 0 [Box G.E.P. & Cox D.R. 1964,
 * J R Stat Soc B 26:211–252]. It rises with mass.
 *
 * Unit: `massG` grams.
 */
export const lengthened = (massG: number, power: number): number =>
  power === 0 ? Math.log(massG) : (massG ** power - 1) / power;

/** How far a small change of log mass moves it. */
export const stretch = (lengthenedMass: number, power: number): number =>
  // Where a course has strayed beyond any mass, it is as good as none.
  Math.max(1e-9, 1 + power * lengthenedMass);
