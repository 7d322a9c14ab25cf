import type { LabelCode } from './core/code.ts';
import type { AnimalId, EventId, PhotoId, RackId, TubId } from './core/ids.ts';
import type { Refusal, Result } from './core/result.ts';
import type { Doubt } from './assess/doubt.ts';
import type { CalendarEntry } from './calendar-file/entry.ts';
import type { NewAnimal } from './commands/new-animals.ts';
import type { Labellable } from './commands/new-labels.ts';
import type { NewRack } from './commands/new-rack.ts';
import type { Draft } from './events/event.ts';
import type { ProtocolChanges } from './protocol/own-protocol.ts';
import type { FileLike, FileSpot } from './file-like.ts';
import type { RestorePreview } from './restore-preview.ts';
import type { SheetCommands } from './sheet/preview.ts';
import type { PhotoBackupMade, PhotoRoom } from './photo-room.ts';
import type { Vet } from './state/house.ts';
import type { ColumnMap } from './room/csv/columns.ts';
import type { ReadingsPreview } from './room/csv/look-into.ts';
import type { ReadPlace } from './room/log-drafts.ts';
import type { AnimalView } from './views/animal-view.ts';
import type { CaptureView, Found } from './views/capture-view.ts';
import type { ChooseAsk, ChooseView } from './views/choose-view.ts';
import type { DropsAsk, DropsView } from './views/drops-view.ts';
import type { EveningView } from './views/evening-view.ts';
import type { FeedingView } from './views/feeding-view.ts';
import type { Hit } from './views/find-view.ts';
import type { GeneListView } from './views/gene-list-view.ts';
import type { GeneAsk, GeneWhyView } from './views/gene-why-view.ts';
import type { GenesView } from './views/genes-view.ts';
import type { HatcheryCommands, HatcheryViews } from './views/hatchery-desk.ts';
import type { LabelsView } from './views/labels-view.ts';
import type { LanesView } from './views/lanes-view.ts';
import type { LineageView } from './views/lineage-view.ts';
import type { PairAsk, PairView } from './views/pair-view.ts';
import type { MateCell, MatesAsk } from './views/mates-view.ts';
import type { MoveCounts } from './views/move-counts.ts';
import type { MovesView } from './views/moves-view.ts';
import type { MateWarning } from './views/pair-warnings-view.ts';
import type { PlanView } from './views/plan-view.ts';
import type { PreyView } from './views/prey-view.ts';
import type { ProtocolPreview } from './views/protocol-preview.ts';
import type { ProtocolView } from './views/protocol-view.ts';
import type { Reading } from './views/reading-view.ts';
import type { RoomAsk, RoomView } from './views/room-view.ts';
import type { RacksView, RackView, RowMeal } from './views/racks-view.ts';
import type { SaleCommands, SaleViews } from './views/sale-desk.ts';
import type { OutcomesView, ReviewAsk, ReviewView } from './views/review-view.ts';
import type { RotationView } from './views/rotation-view.ts';
import type { SeasonView } from './views/season-view.ts';
import type { TonightView } from './views/tonight-view.ts';
import type { WeightView } from './views/weight-view.ts';
import type { YoungView } from './views/young-view.ts';

// The desk is where records are kept and tonight is worked out, away from the page. The page asks
// it for views and gives it commands; both sides and the tests share these words.

export type CollectionName = 'own' | 'demo';

export interface DeskStatus {
  readonly collection: CollectionName;
  readonly records: number;
  readonly animals: number;
  readonly tubs: number;
  /** False while old records are still being read. */
  readonly isWhole: boolean;
  /** Records of a newer version, kept but not understood. */
  readonly unreadable: number;
  /** Milliseconds since 1970. */
  readonly lastBackupMs?: number | undefined;
  readonly backupDue: boolean;
  /** Nothing outlives this window: the browser refused storage. */
  readonly inMemoryOnly: boolean;
  readonly initials?: string | undefined;
  readonly vet?: Vet | undefined;
}

/** What a screen can watch: what it says when asked, and what it gets, now and after each change. */
export interface Views extends HatcheryViews, SaleViews {
  readonly status: { readonly ask: null; readonly view: DeskStatus };
  readonly tonight: { readonly ask: null; readonly view: TonightView };
  readonly tomorrow: { readonly ask: null; readonly view: TonightView };
  readonly code: { readonly ask: LabelCode; readonly view: Found };
  readonly tub: { readonly ask: TubId; readonly view: CaptureView };
  readonly snake: { readonly ask: AnimalId; readonly view: CaptureView | undefined };
  readonly racks: { readonly ask: null; readonly view: RacksView };
  readonly rack: { readonly ask: RackId; readonly view: RackView | undefined };
  readonly meals: { readonly ask: RackId; readonly view: readonly RowMeal[] };
  readonly animal: { readonly ask: AnimalId; readonly view: AnimalView | undefined };
  readonly season: { readonly ask: AnimalId; readonly view: SeasonView | undefined };
  readonly lanes: { readonly ask: null; readonly view: LanesView };
  readonly lineage: { readonly ask: AnimalId; readonly view: LineageView | undefined };
  readonly choose: { readonly ask: ChooseAsk; readonly view: ChooseView };
  readonly genes: { readonly ask: AnimalId; readonly view: GenesView | undefined };
  /** Why a chance to carry is what it is, and what would settle it. */
  readonly geneWhy: { readonly ask: GeneAsk; readonly view: GeneWhyView | undefined };
  readonly geneList: { readonly ask: null; readonly view: GeneListView };
  readonly pair: { readonly ask: PairAsk; readonly view: PairView };
  /** What weighs against pairing an animal with each mate there is. */
  readonly pairWarnings: { readonly ask: AnimalId; readonly view: readonly MateWarning[] };
  /** The board of females against males, and the book of the males. */
  readonly rotation: { readonly ask: null; readonly view: RotationView };
  /** Every male against one female. */
  readonly mates: { readonly ask: MatesAsk; readonly view: readonly MateCell[] };
  /** Tonight's moves of males, by the plan that was kept. */
  readonly moves: { readonly ask: null; readonly view: MovesView };
  readonly drops: { readonly ask: DropsAsk; readonly view: DropsView };
  readonly moveCounts: { readonly ask: null; readonly view: MoveCounts };
  /** What is made of words about genes that are still being typed. */
  readonly reading: { readonly ask: string; readonly view: Reading };
  /** A female's clutches, to count their young. */
  readonly young: { readonly ask: AnimalId; readonly view: YoungView | undefined };
  /** Weight, refusals and readiness of one snake. */
  readonly weight: { readonly ask: AnimalId; readonly view: WeightView | undefined };
  /** Tonight's feeding, and what to thaw for it. */
  readonly feeding: { readonly ask: null; readonly view: FeedingView };
  /** The freezer, and what to order for so many weeks. */
  readonly prey: { readonly ask: number; readonly view: PreyView };
  readonly find: { readonly ask: string; readonly view: readonly Hit[] };
  readonly room: { readonly ask: RoomAsk; readonly view: RoomView | undefined };
  readonly labels: { readonly ask: null; readonly view: LabelsView };
  readonly protocol: { readonly ask: null; readonly view: ProtocolView };
  /** What changes of the protocol would do tonight, before they are written. */
  readonly protocolPreview: { readonly ask: ProtocolChanges; readonly view: ProtocolPreview };
  /** Undefined for the demo, which never reminds of anything. */
  readonly evening: { readonly ask: null; readonly view: EveningView | undefined };
  /** What worked, in one season or in all. */
  readonly review: { readonly ask: ReviewAsk; readonly view: ReviewView };
  /** What hatched of two, beside the odds. */
  readonly outcomes: {
    readonly ask: { readonly dam: AnimalId; readonly sire: AnimalId };
    readonly view: OutcomesView;
  };
  readonly calendar: { readonly ask: null; readonly view: readonly CalendarEntry[] };
}

/** What became of something to be written down. */
export type Recorded =
  | { readonly kind: 'done'; readonly ids: readonly EventId[]; readonly notes: readonly string[] }
  | {
      readonly kind: 'refused';
      readonly refusals: readonly Refusal[];
      /** What was likely meant, where that can be said. */
      readonly instead?: Doubt['instead'];
    }
  /** Not written yet: ask, and send it again with these codes accepted. */
  | { readonly kind: 'asked'; readonly doubts: readonly Doubt[] };

export interface Commands extends HatcheryCommands, SaleCommands, SheetCommands {
  /** Opens a collection, or begins an empty one. */
  readonly open: { readonly ask: CollectionName; readonly answer: DeskStatus };
  readonly record: {
    readonly ask: {
      readonly drafts: readonly Draft[];
      /** Codes of doubts the keeper has answered with yes. */
      readonly accepted?: readonly string[] | undefined;
      /** The tub it is made at; its position is copied into the record. */
      readonly tub?: TubId | undefined;
    };
    readonly answer: Recorded;
  };
  readonly strike: {
    readonly ask: { readonly ids: readonly EventId[]; readonly reason: string };
    readonly answer: Recorded;
  };
  readonly makeRack: { readonly ask: NewRack; readonly answer: Result<RackId> };
  readonly addAnimals: {
    readonly ask: readonly NewAnimal[];
    readonly answer: Result<readonly AnimalId[]>;
  };
  /**
   * Lays a picture by, as JPEG. It counts once a record names it: one that is written in the same
   * go as another is about that one.
   */
  readonly keepPhoto: { readonly ask: Uint8Array; readonly answer: PhotoId };
  /** Undefined where it was kept on another device. */
  readonly photo: { readonly ask: PhotoId; readonly answer: Uint8Array | undefined };
  /** Throws away one that no record names. */
  readonly dropPhoto: { readonly ask: PhotoId; readonly answer: null };
  /** What pictures take on this device, and which of them no backup has taken away yet. */
  readonly photoRoom: { readonly ask: null; readonly answer: PhotoRoom };
  /** Gives an animal a card, or a room a label, to be printed; the same one if it has one. */
  readonly giveCard: { readonly ask: readonly Labellable[]; readonly answer: Recorded };
  readonly backUp: {
    readonly ask: null;
    readonly answer: { readonly fileName: string; readonly file: FileLike };
  };
  /** What is coming, as an iCalendar file. */
  readonly calendarFile: {
    readonly ask: null;
    readonly answer: { readonly fileName: string; readonly text: string };
  };
  /** The same with the pictures, into a file of the keeper's, or else as one that is handed over. */
  readonly backUpWithPhotos: {
    readonly ask: FileSpot | null;
    readonly answer: PhotoBackupMade;
  };
  /** A backup has left this device; with the newest picture in it, where it held any. */
  readonly backedUp: {
    readonly ask: { readonly newestSafePhoto?: PhotoId };
    readonly answer: null;
  };
  /** Looks into a backup and says what is new in it. Changes nothing. */
  readonly lookInto: { readonly ask: FileLike; readonly answer: Result<RestorePreview> };
  /** Adds what the last look found. */
  readonly takeIn: { readonly ask: null; readonly answer: Result<number> };
  /** Looks into a sensor's file and says what would be taken in. Changes nothing. */
  readonly lookIntoReadings: {
    readonly ask: ReadPlace & {
      readonly sensor: string;
      /** Absent: the one looked into last. */
      readonly file?: FileLike | undefined;
      /** What the columns hold; absent: as guessed. */
      readonly map?: ColumnMap | undefined;
    };
    readonly answer: Result<ReadingsPreview>;
  };
  /** Writes down the readings that the last look found new. */
  readonly takeInReadings: {
    readonly ask: null;
    readonly answer: Result<{ readonly readings: number; readonly ids: readonly EventId[] }>;
  };
  /** The best rotation of the next nights. Changes nothing: keeping it is a record. */
  readonly planVisits: { readonly ask: null; readonly answer: PlanView };
  readonly setInitials: { readonly ask: string; readonly answer: null };
  readonly eraseDemo: { readonly ask: null; readonly answer: null };
  /** The page came back to the front: time may have passed. */
  readonly wake: { readonly ask: null; readonly answer: null };
}

/** What the screens need from outside. `src/app` makes it from a worker. */
export interface Desk {
  /** Calls back at once and after each change, until the returned function is called. */
  watch<Kind extends keyof Views>(
    kind: Kind,
    ask: Views[Kind]['ask'],
    show: (view: Views[Kind]['view']) => void,
  ): () => void;
  /** Errors: rejects with a Fault's message and remedy where the device let us down. */
  tell<Kind extends keyof Commands>(
    kind: Kind,
    ask: Commands[Kind]['ask'],
  ): Promise<Commands[Kind]['answer']>;
}
