import { expect, test } from 'vitest';
import { simulate } from '../../../demo-data/simulate.ts';
import { demoScenario } from '../../../demo-data/scenario.ts';
import { createPicture } from '../../../src/domain/picture/picture.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import type { Day } from '../../../src/domain/core/calendar.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { tomorrowView } from '../../../src/domain/views/tomorrow-view.ts';
import { tonightView } from '../../../src/domain/views/tonight-view.ts';

// A night later, with nothing written down since, tonight's list is the one that was worked out.
test.each(['2026-07-11', '2026-12-31', '2027-03-27'])('after %s it comes true', (last) => {
  const ledger = createLedger();
  ledger.add(simulate(demoScenario(last as Day, 60)));
  const ms = Date.parse(`${last}T21:00:00+01:00`);
  const tonight = createPicture(ledger, { ms, offsetMin: 60 }, rules);
  const ahead = tomorrowView(tonight);
  tonight.update([], { ms: ms + 86_400_000, offsetMin: 60 });
  expect(ahead).toEqual(tonightView(tonight));
  expect(ahead.stops.length).toBeGreaterThan(5);
});
