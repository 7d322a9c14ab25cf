import { codeOf } from '../commands/new-labels.ts';
import type { ClutchId, IncubatorId } from '../core/ids.ts';
import { clutchesIn, incubatorsIn } from '../clutch/clutches-in.ts';
import { ownPips } from '../clutch/own-pips.ts';
import type { Picture } from '../picture/picture.ts';
import { clutchFathers } from '../rotation/paternity.ts';
import type { LabelSubject } from '../labels/subject.ts';
import { isOpen } from '../clutch/expected.ts';
import { clutchLine, type ClutchLine } from './hatchery-view.ts';

type EggLabel = LabelSubject & { readonly wasPrinted: boolean };

/** Labels of egg boxes, each for the box and again for its lid, since lids get swapped; and incubators’. */
export function eggLabels(picture: Picture): EggLabel[] {
  const own = ownPips(picture);
  const boxes = clutchesIn(picture)
    .filter(isOpen)
    .flatMap((clutch): EggLabel[] => {
      const code = codeOf(clutch.id, picture);
      if (!code) return [];
      const line = clutchLine(clutch, picture, own);
      const wasPrinted = picture.label(code)?.printedAt !== undefined;
      const { isStated, sires } = clutchFathers(clutch, picture);
      const fathers = sires.map(({ male }) =>
        male === 'unknown' || male === 'none' ? male : picture.facts.nameOf(male),
      );
      const grounds = isStated ? 'by' : 'by the records';
      const by = fathers.length > 0 ? [`${grounds} ${fathers.join(' or ')}`] : [];
      return ['Box', 'Lid'].map((part) => ({
        code,
        kind: 'clutch',
        title: `${part}: ${line.dam}`,
        lines: [...by, ...boxLines(line)],
        wasPrinted,
      }));
    });
  const incubators = incubatorsIn(picture).flatMap((incubator): EggLabel[] => {
    const code = codeOf(incubator.id, picture);
    if (!code || incubator.retired) return [];
    const wasPrinted = picture.label(code)?.printedAt !== undefined;
    const lines = ['Temperature: scan to write down'];
    return [{ code, kind: 'incubator', title: incubator.name, lines, wasPrinted }];
  });
  return [...boxes, ...incubators];
}

function boxLines({ laid, counts, window, incubator }: ClutchLine): string[] {
  const eggs = counts.good === undefined ? [] : [`${counts.good} good, ${counts.slugs} slugs`];
  return [
    ...(laid ? [`laid ${laid}`] : []),
    ...eggs,
    ...(window ? [`pips ${window.from} to ${window.to}`] : []),
    ...(incubator === undefined ? [] : [incubator]),
  ];
}

/** What is in use and cannot be scanned yet. */
export const unlabelledEggs = (picture: Picture): readonly (ClutchId | IncubatorId)[] =>
  [
    ...clutchesIn(picture).flatMap((clutch) => (isOpen(clutch) ? [clutch.id] : [])),
    ...incubatorsIn(picture).flatMap(({ id, retired }) => (retired ? [] : [id])),
  ].filter((id) => codeOf(id, picture) === undefined);
