import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { planView } from '../../../src/domain/views/plan-view.ts';
import { movesView } from '../../../src/domain/views/moves-view.ts';
import { malePage } from '../../../src/domain/views/male-book.ts';
import { highsSolver } from '../../../src/worker/planner/highs-solver.ts';
import { anEvent, aPicture, day } from '../../make.ts';
import { tubId } from '../../make-ids.ts';
import { arrivals, ate, her, him, on, ovulated, scan, visit } from '../season/make-season.ts';

// From records to a plan. Sizes, ages and days are those of the protocol's middle school.

const solve = highsSolver();
const TONIGHT = on('2026-12-10');
const plan = (events: readonly RackEvent[], at: string = TONIGHT) =>
  planView(aPicture(events, at), solve);
const wanted = anEvent('pair-wanted', {
  female: her,
  male: him,
  choice: 'first',
  at: on('2026-12-01'),
});
const building = [scan('2026-11-20', 14), scan('2026-12-09', 20)];
const ready = [...arrivals, ...building, wanted];

describe('a pair is planned from the records', () => {
  test('when she builds, both are grown, and the keeper wants it', async () => {
    const { visits, proof } = await plan(ready);
    expect(
      visits.map(({ male, female, in: into, out }) => [male, female, into, out]),
    ).toContainEqual([him, her, day('2026-12-10'), day('2026-12-13')]);
    expect(proof).toMatch(/^Proven/);
  });

  test('not after an ovulation, in blue, or for three days after a meal, and says so', async () => {
    const over = await plan([...ready, ovulated('2026-12-10')]);
    expect(over.unplanned[0]?.says.join(' ')).toMatch(/has ovulated/);
    const fed = await plan([...ready, ate('2026-12-09')]);
    expect(fed.visits[0]?.in).toBe('2026-12-12');
    const blue = anEvent('opaque-seen', { animal: her, at: on('2026-12-09') });
    const opaque = await plan([...ready, blue]);
    expect(opaque.unplanned[0]?.says.join(' ')).toMatch(/in blue/);
  });

  test('not on evenings away, and not by a pair kept apart', async () => {
    const away = anEvent('evenings-away', {
      from: day('2026-12-10'),
      last: day('2026-12-11'),
      is: 'away',
      at: on('2026-12-09'),
    });
    expect((await plan([...ready, away])).visits[0]?.in).toBe('2026-12-12');
    const apart = anEvent('visit-ruled', {
      female: her,
      male: him,
      rule: { kind: 'apart' },
      at: on('2026-12-09'),
    });
    const barred = await plan([...ready, apart]);
    expect(barred.visits).toEqual([]);
    expect(barred.unplanned[0]?.says).toEqual([
      'You keep Cedar and Sorrel apart. Lift it to plan them.',
    ]);
  });

  test('on the pinned evenings and no others', async () => {
    const pin = anEvent('visit-ruled', {
      female: her,
      male: him,
      rule: { kind: 'pinned', in: day('2026-12-14'), out: day('2026-12-16') },
      at: on('2026-12-09'),
    });
    const { visits } = await plan([...ready, pin]);
    expect(visits.find(({ isPinned }) => isPinned)).toMatchObject({
      in: '2026-12-14',
      out: '2026-12-16',
    });
  });
});

describe('the plan that was kept', () => {
  const housed = [her, him].map((animal, i) =>
    anEvent('moved', { animal, tub: tubId(i + 1), at: on('2026-11-01') }),
  );
  const kept = anEvent('visits-planned', {
    night: day('2026-12-10'),
    visits: [{ female: her, male: him, in: day('2026-12-10'), out: day('2026-12-13') }],
    at: on('2026-12-10'),
  });

  test('says tonight’s move, and holds it back when the facts change', () => {
    const open = movesView(aPicture([...ready, ...housed, kept], TONIGHT)).moves;
    expect(open).toMatchObject([{ kind: 'in', male: { id: him }, female: { id: her } }]);
    expect(open[0]?.blocked).toBeUndefined();
    const fed = movesView(aPicture([...ready, ...housed, kept, ate('2026-12-10')], TONIGHT)).moves;
    expect(fed[0]?.blocked).toMatch(/Sorrel ate lately/);
  });

  test('names a missed evening and where the visit went', async () => {
    const { changes } = await plan([...ready, kept], on('2026-12-11'));
    expect(changes[0]).toMatch(/^Missed: Cedar with Sorrel.*Now tonight/);
  });

  test('is done once he is in', async () => {
    const begun = [...ready, ...housed, kept, ...visit('2026-12-10')];
    const { changes, visits } = await plan(begun, on('2026-12-11'));
    expect(changes.filter((each) => each.startsWith('Missed'))).toEqual([]);
    expect(visits[0]).toMatchObject({ isUnderWay: true, out: '2026-12-13' });
    expect(movesView(aPicture(begun, on('2026-12-13'))).moves).toMatchObject([{ kind: 'out' }]);
  });
});

describe('the males', () => {
  test('one that lost 12 % of his mass is stopped, and the book says why', async () => {
    const thin = [
      ...ready,
      ...visit('2026-11-20', '2026-11-23'),
      anEvent('weighed', { animal: him, massG: 700, at: on('2026-12-09') }),
    ];
    const picture = aPicture(thin, TONIGHT);
    // 800 g before the season: 700 g is 12.5 % less.
    expect(malePage(picture.animal(him)!, picture)).toMatchObject({
      isStopped: true,
      stop: expect.stringContaining('12 % less than the 800\u00A0g'),
    });
    expect((await plan(thin)).visits).toEqual([]);
  });
});
