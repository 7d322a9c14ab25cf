import type { Found } from '../domain/views/capture-view.ts';

/** The screen of a label that is no snake’s and no tub’s; for a temperature, with its form open. */
export function routeOf(found: Found): string | undefined {
  switch (found.kind) {
    case 'room':
      return `/room/${found.room}/read`;
    case 'incubator':
      return `/incubator/${found.incubator}/read`;
    case 'clutch':
      return `/clutch/${found.clutch}`;
    default:
      return undefined;
  }
}
