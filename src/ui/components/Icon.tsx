/** Line drawings on a 24 × 24 grid, made for this room. */
const drawings = {
  // A rat from the side: body, ear, tail.
  feed: 'M3 15c0-4 4-7 9-7 3 0 6 2 8 6-1 2-4 3-8 3H6c-2 0-3-1-3-2ZM9 9c0-2 3-3 4-1M6 17c-2 3-4 2-4 4',
  refuse: 'M3 15c0-4 4-7 9-7 3 0 6 2 8 6-1 2-4 3-8 3H6c-2 0-3-1-3-2ZM4 3l16 18',
  overnight:
    'M3 17c0-3 3-5 7-5 3 0 5 1 7 4-1 2-3 2-7 2H6c-2 0-3 0-3-1ZM20 10a5 5 0 1 1-6-7 4 4 0 0 0 6 7Z',
  weigh: 'M4 20h16M6 20l1-6h10l1 6M12 14V9M7 9h10M8 5h8',
  shed: 'M3 8c3-4 6 4 9 0s6 4 9 0M3 14c3-4 6 4 9 0M15 13l2 1M19 15l2 0M3 20c3-4 6 4 9 0',
  lock: 'M8 12a4 4 0 1 0 0-.1M16 12a4 4 0 1 0 0-.1M8 8h8M8 16h8',
  follicles:
    'M6 12m-3 0a3 3 0 1 0 6 0a3 3 0 1 0-6 0M13 10m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0M19 16m-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
  more: 'M4 6h16M4 12h11M4 18h6',
  // The temperature of a night: down a step, and down again.
  tonight: 'M3 6h6v6h6v6h6',
  round: 'M4 9V4h5M20 9V4h-5M4 15v5h5M20 15v5h-5M9 9h6v6H9Z',
  racks: 'M4 3v18M20 3v18M4 6h16v4H4M4 13h16v4H4M10 8h4M10 15h4',
  find: 'M10 17a7 7 0 1 0 0-14 7 7 0 0 0 0 14ZM15 15l6 6',
  shelf: 'M3 9h18M5 9v11M19 9v11M5 20h3M16 20h3M8 9V5h5v4M15 9V6h3v3',
  blue: 'M2 12c5-7 15-7 20 0-5 7-15 7-20 0ZM9 12h6M10 9.5h4M10 14.5h4',
  hold: 'M8 5v14M16 5v14',
  away: 'M4 10V5h5M4 14v5h5M11 12h10M17 8l4 4-4 4',
  pair: 'M4 17c0-8 8-8 8-2s8 6 8-2M4 7c3 0 3 3 6 3',
  out: 'M10 4H4v16h6M9 12h12M17 8l4 4-4 4',
  male: 'M10 14m-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0M14.5 9.5 21 3M16 3h5v5',
  female: 'M12 9m-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0M12 15v7M8.5 19h7',
  unknown: 'M12 12m-8 0a8 8 0 1 0 16 0a8 8 0 1 0-16 0M12 12h.01',
  back: 'M15 4l-8 8 8 8',
  next: 'M9 4l8 8-8 8',
  close: 'M5 5l14 14M19 5L5 19',
  undo: 'M9 6L4 11l5 5M4 11h10c4 0 6 2 6 5s-2 4-5 4',
  check: 'M4 13l5 5L20 6',
  torch: 'M8 3h8l-1 7H9ZM9 10v11h6V10M12 14v2',
  camera: 'M3 8h4l2-3h6l2 3h4v11H3ZM12 13m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0',
  keypad: 'M6 6h.01M12 6h.01M18 6h.01M6 12h.01M12 12h.01M18 12h.01M6 18h.01M12 18h.01M18 18h.01',
  print: 'M7 8V3h10v5M7 17H4V9h16v8h-3M7 14h10v7H7Z',
  safe: 'M4 4h16v16H4ZM12 12m-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0M12 8v2M15 14l-1.5-1',
  add: 'M12 4v16M4 12h16',
  light: 'M12 3v3M5 6l2 2M19 6l-2 2M7 13a5 5 0 1 1 10 0c0 2-2 3-2 5H9c0-2-2-3-2-5ZM9 21h6',
  alarm: 'M12 3L2 20h20ZM12 10v4M12 17h.01',
  // Three in a nest, a box with a hole, a lamp held over a tub.
  eggs: 'M8 9c2 0 4 3 4 6s-2 4-4 4-4-1-4-4 2-6 4-6ZM16 9c2 0 4 3 4 6s-2 4-4 4-4-1-4-4 2-6 4-6ZM12 4c1 0 2 1 3 3M12 4c-1 0-2 1-3 3',
  nest: 'M3 10l9-5 9 5v10H3ZM12 15m-3 0a3 3 0 1 0 6 0a3 3 0 1 0-6 0',
  look: 'M3 17h18M5 17v-5h14v5M12 12V8M9 3l3 5 3-5',
  // A thermometer.
  heat: 'M9 4a3 3 0 0 1 6 0v9a5 5 0 1 1-6 0ZM12 8v8M17 5h3M17 9h3',
  quarantine: 'M4 4h16v16H4ZM4 10l6-6M4 18L18 4M8 20L20 8M16 20l4-4',
} as const;

export type IconName = keyof typeof drawings;

/** Always beside its word: an icon alone says nothing here. */
export const Icon = ({ name }: { name: IconName }) => (
  <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
    <path d={drawings[name]} />
  </svg>
);
