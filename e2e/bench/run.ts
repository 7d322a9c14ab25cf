import { browserFigures } from './browser.ts';
import { bundleFigures } from './bundle.ts';
import { choosingFigures } from './choosing.ts';
import { decadeFigures } from './decade.ts';
import { decodeFigures } from './decode.ts';
import { print } from './figure.ts';
import { feedingFigures } from './feeding.ts';
import { foldFigures } from './fold.ts';
import { follicleFigures } from './follicles.ts';
import { geneFigures } from './genes.ts';
import { growthFigures } from './growth.ts';
import { lighthouseFigures } from './lighthouse.ts';
import { machineFigure } from './machine.ts';
import { pedigreeFigures } from './pedigree.ts';
import { plannerFigures } from './planner.ts';
import { pipFigures } from './pips.ts';
import { rotationFigures } from './rotation.ts';
import { windowFigures } from './windows.ts';

// Everything that is measured, one JSON object a line. About a quarter of an hour; each file runs alone too.

print(machineFigure());
foldFigures(print);
windowFigures(print);
pipFigures(print);
follicleFigures(print);
growthFigures(print);
geneFigures(print);
choosingFigures(print);
pedigreeFigures(print);
await rotationFigures(print);
await plannerFigures(print);
await bundleFigures(print);
await feedingFigures(print);
await browserFigures(print);
await decadeFigures(print);
await lighthouseFigures(print);
await decodeFigures(print);
