import type { SizeMm } from '../../domain/labels/format.ts';

/**
 * Makes the browser print on pages of this size, without margins. Unit: mm.
 *
 * A constructed stylesheet, because the page's policy forbids style elements and attributes.
 * Returns the function that takes it away again.
 */
export function setPageSize({ width, height }: SizeMm): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0 }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
  };
}
