import { ok, refuse } from '../domain/core/result.ts';
import type { Commands, Recorded } from '../domain/desk.ts';
import type { Draft } from '../domain/events/event.ts';
import type { OpenedFile } from '../domain/room/csv/look-into.ts';
import type { ReadPlace } from '../domain/room/log-drafts.ts';
import { seriesKey, type Reading, type Series } from '../domain/state/readings.ts';
import { standingHistory } from '../domain/views/room-view.ts';
import { seriesOf, seriesOfIncubator } from '../domain/room/series.ts';
import type { Collection, World } from './collection.ts';

const MOST_BYTES = 64_000_000;

/** This device’s own zone. */
const zone = (ms: number): number => -new Date(ms).getTimezoneOffset();

/** What a look at a sensor's file found, kept until the keeper says to take it in. */
interface Looked {
  readonly drafts: readonly Draft[];
  readonly fresh: number;
}

/** Reads sensors' files. The reader is loaded when the first file is picked. */
export function createReadingsReader(
  world: World,
  collection: Collection,
  write: (drafts: readonly Draft[]) => Promise<Recorded>,
) {
  const { picture } = collection;
  let opened: OpenedFile | undefined;
  let looked: Looked | undefined;

  /** Readings of the same sensor at the same place that are there already. */
  function knownOf(place: ReadPlace & { readonly sensor: string }): readonly Reading[] {
    const series: readonly Series<string>[] =
      'room' in place
        ? seriesOf(standingHistory(place.room, picture))
        : seriesOfIncubator(standingHistory(place.incubator, picture));
    return series.find((each) => seriesKey(each) === seriesKey(place))?.readings ?? [];
  }

  return {
    async lookIntoReadings({
      file,
      map,
      ...place
    }: Commands['lookIntoReadings']['ask']): Promise<Commands['lookIntoReadings']['answer']> {
      looked = undefined;
      const [{ openFile, previewOf }, { readReadings }, { logDrafts, noveltyOf }] =
        await Promise.all([
          import('../domain/room/csv/look-into.ts'),
          import('../domain/room/csv/read-readings.ts'),
          import('../domain/room/log-drafts.ts'),
          collection.readHistory(),
        ]);
      if (file) {
        opened = undefined;
        if (file.size > MOST_BYTES) {
          return refuse('csv-too-large', 'This file is over 64 MB. Export a shorter time.');
        }
        const result = openFile(await file.text());
        if (!result.ok) return result;
        opened = result.value;
      }
      if (!opened) return refuse('csv-none', 'Pick a file first.');
      const columns = map ?? opened.guess.map;
      const read = readReadings(opened.rows, columns, zone, world.clock().ms);
      const known = knownOf(place);
      const { fresh } = noveltyOf(read.readings, known);
      looked = { drafts: logDrafts(place, fresh, columns.unit), fresh: fresh.length };
      const { roomGapHours, incubatorGapHours } = picture.facts.protocol;
      const gapMin = ('room' in place ? roomGapHours : incubatorGapHours) * 60;
      return ok(previewOf(opened, columns, read, known, gapMin));
    },

    async takeInReadings(): Promise<Commands['takeInReadings']['answer']> {
      if (!looked || looked.fresh === 0) {
        return refuse('nothing-looked-into', 'There is nothing new to take in. Pick a file.');
      }
      const { drafts, fresh } = looked;
      looked = undefined;
      opened = undefined;
      const written = await write(drafts);
      if (written.kind !== 'done') return refuse('not-written', 'The readings were not written.');
      return ok({ readings: fresh, ids: written.ids });
    },
  };
}
