import type { DeskStatus, Views } from '../domain/desk.ts';
import type { Picture } from '../domain/picture/picture.ts';
import { animalView } from '../domain/views/animal-view.ts';
import { calendarEntries } from '../domain/views/calendar-view.ts';
import { chooseView } from '../domain/views/choose-view.ts';
import { clutchView } from '../domain/views/clutch-view.ts';
import { dropsView } from '../domain/views/drops-view.ts';
import { eveningView } from '../domain/views/evening-view.ts';
import { fathersView } from '../domain/views/father-offers.ts';
import { feedingView } from '../domain/views/feeding-view.ts';
import { findView } from '../domain/views/find-view.ts';
import { geneListView } from '../domain/views/gene-list-view.ts';
import { genesView } from '../domain/views/genes-view.ts';
import { geneWhyView } from '../domain/views/gene-why-view.ts';
import { hatcheryView } from '../domain/views/hatchery-view.ts';
import { incubatorSpan } from '../domain/views/incubator-span.ts';
import { incubatorView } from '../domain/views/incubator-view.ts';
import { labelsView } from '../domain/views/labels-view.ts';
import { lanesView } from '../domain/views/lanes-view.ts';
import { lineageView } from '../domain/views/lineage-view.ts';
import { matesView } from '../domain/views/mates-view.ts';
import { movesView } from '../domain/views/moves-view.ts';
import { pairView } from '../domain/views/pair-view.ts';
import { pairWarningsView } from '../domain/views/pair-warnings-view.ts';
import { papersView } from '../domain/views/papers-view.ts';
import { preyView } from '../domain/views/prey-view.ts';
import { protocolPreview } from '../domain/views/protocol-preview.ts';
import { protocolView } from '../domain/views/protocol-view.ts';
import { racksView, rackView, rowMeals } from '../domain/views/racks-view.ts';
import { readingView } from '../domain/views/reading-view.ts';
import { registerView } from '../domain/views/register-view.ts';
import { roomView } from '../domain/views/room-view.ts';
import { outcomesView, reviewView } from '../domain/views/review-view.ts';
import { rotationView } from '../domain/views/rotation-view.ts';
import { salesView } from '../domain/views/sales-view.ts';
import { seasonView } from '../domain/views/season-view.ts';
import { tomorrowView } from '../domain/views/tomorrow-view.ts';
import { weightView } from '../domain/views/weight-view.ts';
import { youngView } from '../domain/views/young-view.ts';
import { firstShowers, type PartShowers } from './first-views.ts';
import { askByAllRules, nightShowers } from './whole-night.ts';

/** Every view there is. */
const showers: PartShowers<keyof Views> = {
  ...firstShowers,
  ...nightShowers,
  tomorrow: (_ask, picture) => tomorrowView(picture),
  racks: (_ask, picture) => racksView(picture),
  rack: rackView,
  meals: rowMeals,
  animal: animalView,
  season: seasonView,
  lanes: (_ask, picture) => lanesView(picture),
  lineage: lineageView,
  choose: chooseView,
  genes: genesView,
  geneWhy: geneWhyView,
  geneList: (_ask, picture) => geneListView(picture),
  pair: pairView,
  pairWarnings: pairWarningsView,
  rotation: (_ask, picture) => rotationView(picture),
  mates: matesView,
  moves: (_ask, picture) => movesView(picture),
  drops: dropsView,
  reading: readingView,
  young: youngView,
  weight: weightView,
  feeding: (_ask, picture) => feedingView(picture),
  prey: preyView,
  find: findView,
  room: roomView,
  hatchery: (_ask, picture) => hatcheryView(picture),
  clutch: clutchView,
  fathers: fathersView,
  incubator: incubatorView,
  sales: (_ask, picture) => salesView(picture),
  papers: papersView,
  register: registerView,
  incubatorSpan,
  labels: (_ask, picture) => labelsView(picture),
  protocol: (_ask, picture) => protocolView(picture),
  protocolPreview,
  evening: (_ask, picture, { collection }) =>
    collection === 'demo' ? undefined : eveningView(picture),
  review: reviewView,
  outcomes: outcomesView,
  calendar: (_ask, picture) => calendarEntries(picture),
};

export const show = <Kind extends keyof Views>(
  kind: Kind,
  ask: Views[Kind]['ask'],
  picture: Picture,
  status: DeskStatus,
): Views[Kind]['view'] => {
  askByAllRules(picture);
  return showers[kind](ask, picture, status);
};
