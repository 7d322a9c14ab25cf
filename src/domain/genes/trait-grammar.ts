import type { Catalogue } from './catalogue.ts';
import { ONE, oneMinus } from './fraction.ts';
import { claimOf, type Before, type Het } from './name-claim.ts';
import { dictionaryOf } from './trait-dictionary.ts';
import { partsOf, type Part } from './trait-parts.ts';
import type { Place, Remark, Statement } from './trait-statement.ts';
import { wordsOf } from './trait-text.ts';

/** Words that name nothing the catalogue knows, or no one thing. */
export interface UnknownWords extends Place {
  readonly words: string;
  readonly nearest: readonly string[];
  readonly message?: string;
}

export interface Statements {
  readonly statements: readonly Statement[];
  readonly notes: readonly Remark[];
  readonly contradictions: readonly Remark[];
  readonly unknown: readonly UnknownWords[];
  /** Where it says that the animal is a normal. */
  readonly normal: Place | undefined;
}

type Waiting = Before & Place;

/** What the words say, phrase by phrase; what it comes to at each locus is settled elsewhere. */
export function readStatements(text: string, catalogue: Catalogue): Statements {
  const statements: Statement[] = [];
  const notes: Remark[] = [];
  const contradictions: Remark[] = [];
  const unknown: UnknownWords[] = [];
  let normal: Place | undefined;
  let waiting: Waiting | undefined;
  let het: Het | undefined;

  const against = ({ at, length }: Place, message: string) => {
    contradictions.push({ at, length, message });
  };
  const dropWaiting = () => {
    if (waiting) against(waiting, 'No trait follows that this could go with.');
    waiting = undefined;
  };
  const onName = (part: Extract<Part, { kind: 'name' }>) => {
    const { meaning, said } = part;
    const place = reaching(waiting, part);
    if (meaning.kind === 'unclear') {
      unknown.push({ ...place, words: said, nearest: [], message: meaning.message });
      return;
    }
    const before = waiting && { ...waiting, lists: part.lists };
    const told = claimOf(said, meaning, before, het);
    if (told.claim) statements.push({ ...place, locus: meaning.locus, claim: told.claim });
    if (told.note !== undefined) notes.push({ ...place, message: told.note });
    if (told.against !== undefined) against(place, told.against);
    het = told.het;
  };
  const onMaker = (part: Extract<Part, { kind: 'maker' }>) => {
    const locus = catalogue.loci.find(({ linkage }) => linkage.kind === 'sex-linked');
    const place = reaching(waiting, part);
    const sure = waiting?.chance ?? ONE;
    const chance = part.on === 'Y' ? sure : oneMinus(sure);
    if (locus) statements.push({ ...place, locus, claim: { kind: 'on Y', chance } });
    else against(place, 'No sex-linked trait is known that this could apply to.');
  };

  for (const part of partsOf(wordsOf(text), dictionaryOf(catalogue))) {
    if (part.begins) {
      dropWaiting();
      if (het?.left === 'phrase') het = undefined;
    }
    switch (part.kind) {
      case 'modifier':
        waiting = joined(waiting, part, { words: new Set(part.words) });
        het = undefined;
        break;
      case 'chance':
        if (part.chance === 'impossible') against(part, 'A chance lies between 0 and 100 %.');
        else waiting = joined(waiting, part, { words: new Set(), chance: part.chance });
        het = undefined;
        break;
      case 'normal':
        normal = { at: part.at, length: part.length };
        break;
      case 'unknown':
        unknown.push({ ...reaching(waiting, part), words: part.word, nearest: part.nearest });
        waiting = undefined;
        break;
      case 'maker':
        onMaker(part);
        waiting = undefined;
        break;
      case 'name':
        onName(part);
        waiting = undefined;
        break;
    }
  }
  dropWaiting();
  return { statements, notes, contradictions, unknown, normal };
}

/** From the first word that waited to the end of the name. */
function reaching(waiting: Place | undefined, { at, length }: Place): Place {
  const from = waiting?.at ?? at;
  return { at: from, length: at + length - from };
}

const joined = (waiting: Waiting | undefined, place: Place, more: Before): Waiting => ({
  ...waiting,
  ...more,
  ...reaching(waiting, place),
  words: new Set([...(waiting?.words ?? []), ...more.words]),
});
