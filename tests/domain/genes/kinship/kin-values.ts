// Standard values of young whose founders are not inbred: F = sum over paths of (1/2)^(n1 + n2 + 1)
// (1 + F of the common ancestor) [Wright 1922, Am Nat 56:330–338].
// Written as young:sire,dam; who is not explained is a founder; the parents of x are the pair.
const cousins = 'm:A,B f:A,B c:m,Y d:Z,f';
export const kinValues: readonly (readonly [who: string, inbreeding: number, family: string])[] = [
  ['parent and offspring', 1 / 4, 'f:A,B x:A,f'],
  ['full sibs', 1 / 4, 'm:A,B f:A,B x:m,f'],
  ['three-quarter sibs', 3 / 16, 'd1:A,B d2:A,B m:S,d1 f:S,d2 x:m,f'],
  ['one sire, one dam the daughter of the other', 3 / 16, 'd2:Z,d1 m:S,d1 f:S,d2 x:m,f'],
  ['one sire, dams half sisters', 5 / 32, 'd1:A,B d2:A,C m:S,d1 f:S,d2 x:m,f'],
  ['half sibs', 1 / 8, 'm:A,B f:A,C x:m,f'],
  ['grandparent and grandchild', 1 / 8, 'p:A,B f:p,C x:A,f'],
  ['uncle and niece', 1 / 8, 'm:A,B f:A,B n:Z,f x:m,n'],
  ['double first cousins', 1 / 8, 'a1:A,B a2:A,B b1:C,D b2:C,D m:a1,b1 f:a2,b2 x:m,f'],
  ['half-uncle and niece', 1 / 16, 'm:A,B p:A,C f:p,D x:m,f'],
  ['great-grandparent and great-grandchild', 1 / 16, 'p:A,B q:p,C f:q,D x:A,f'],
  ['first cousins', 1 / 16, `${cousins} x:c,d`],
  ['half first cousins', 1 / 32, 'p:A,B q:A,C c:p,Y d:q,Z x:c,d'],
  ['first cousins once removed', 1 / 32, `${cousins} e:W,d x:c,e`],
  ['second cousins', 1 / 64, `${cousins} g:c,V e:W,d x:g,e`],
];
