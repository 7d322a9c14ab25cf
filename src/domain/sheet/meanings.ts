/** What a column can hold. */
export type Meaning =
  | 'name'
  | 'sex'
  | 'position'
  | 'hatched'
  | 'traits'
  | 'arrived'
  | 'date'
  | 'time'
  | 'happening'
  | 'value'
  | 'mass'
  | 'weighed on'
  | 'outcome'
  | 'prey'
  | 'prey mass'
  | 'fed on'
  | 'shed'
  | 'shed on'
  | 'length'
  | 'remark'
  | 'warmth'
  | 'nothing';

interface AboutMeaning {
  /** What stands on the button. */
  readonly name: string;
  /** What is made of it. */
  readonly says: string;
  /** Headings by which it is guessed, in lower case. */
  readonly heading: RegExp;
}

/**
 * In the order in which headings are tried: the narrower before the wider. Headings are common
 * practice, no source.
 */
export const meanings: { readonly [Each in Meaning]: AboutMeaning } = {
  'prey mass': {
    name: 'Weight of the prey',
    says: 'What one piece of prey weighed, in grams.',
    heading: /(?:prey|feeder|rat|mouse|meal|food).*(?:weight|mass|\(?\bg\b|gram)/,
  },
  'weighed on': {
    name: 'Day of the weight',
    says: 'The day on which it had the weight that stands beside it.',
    heading: /weigh.*(?:date|day|\bon\b)|(?:date|day).*weigh/,
  },
  'fed on': {
    name: 'Day of a meal',
    says: 'A meal on that day. Without a word about it, it was eaten.',
    heading:
      /(?:fed|feed|meal|ate).*(?:date|day|\bon\b|last)|(?:date|day|last).*(?:fed|feed|meal|ate)\b/,
  },
  'shed on': {
    name: 'Day of a shed',
    says: 'A shed on that day. Without a word about it, it came off whole.',
    heading: /shed.*(?:date|day|\bon\b|last)|(?:date|day|last).*shed/,
  },
  hatched: {
    name: 'Hatch day',
    says: 'The day it hatched.',
    heading: /hatch|birth|born|\bdob\b/,
  },
  arrived: {
    name: 'Day it came',
    says: 'The day it came to you.',
    heading: /arriv|acquired|bought|purchase|(?:date|day) (?:in|got)/,
  },
  sex: { name: 'Sex', says: 'Female, male or not known.', heading: /^(?:sex|gender|m\s*\/\s*f)\b/ },
  position: {
    name: 'Tub',
    says: 'Where it lives, like B4-2.',
    heading: /\btub\b|\brack\b|position|location|\bbin\b|enclosure|\bslot\b/,
  },
  traits: {
    name: 'Genes',
    says: 'Genes as you write them, word for word.',
    heading: /gene|morph|trait|phenotype|genotype/,
  },
  warmth: {
    name: 'Temperature',
    says: 'Not taken in here: it belongs to a room or an incubator. Take it in under Racks, the room, Sensor’s file.',
    heading: /temp|°\s*[cf]\b|hot.?spot|heat/,
  },
  length: {
    name: 'Length',
    says: 'From nose to tail.',
    heading: /length|\bcm\b|inch/,
  },
  mass: {
    name: 'Weight',
    says: 'What it weighed.',
    heading: /weigh|mass\b|\bwt\b|^\s*\(?(?:g|grams?|oz|lbs?)\)?\s*$/,
  },
  outcome: {
    name: 'Ate or refused',
    says: 'What became of a meal.',
    heading: /\bate\b|eaten|refus|outcome|result|accepted|took/,
  },
  prey: {
    name: 'What was offered',
    says: 'A meal. Without a word about it, it was eaten; thawed, unless it says live or fresh.',
    heading: /prey|feeder|food|meal|\bfed\b|feed|offered/,
  },
  shed: { name: 'How it shed', says: 'A shed: whole, in pieces, caps left.', heading: /shed/ },
  happening: {
    name: 'What happened',
    says: 'Weight, meal, refusal, shed, in blue, length or note: one a row.',
    heading: /event|what happened|^(?:type|kind|what|action|activity|record|entry)\b/,
  },
  time: { name: 'Time of day', says: 'The time, beside its day.', heading: /^(?:time|hour)\b/ },
  date: {
    name: 'Day',
    says: 'The day on which all of its row happened.',
    heading: /\bdate\b|\bday\b|^when\b|night/,
  },
  remark: {
    name: 'Remark',
    says: 'A remark, beside what else the row says.',
    heading: /note|remark|comment|memo|observation/,
  },
  value: {
    name: 'How much',
    says: 'The weight, prey, length or words that belong to what happened.',
    heading: /value|amount|detail|reading|quantity|how much|measure/,
  },
  name: {
    name: 'Name',
    says: 'Whose row it is. One that is not yet known here is added.',
    heading: /name|animal|snake|\bid\b|python|^(?:who|no|nr|number|#)\.?$/,
  },
  nothing: { name: 'Left out', says: 'Nothing is read from it.', heading: /(?!)/ },
};

export const meaningNames = Object.keys(meanings) as readonly Meaning[];

/** How an amount is measured, for meanings that are one. */
export const measuredBy = {
  mass: 'mass',
  'prey mass': 'mass',
  length: 'length',
  warmth: 'warmth',
} as const;

export const isDayMeaning = (meaning: Meaning): boolean =>
  ['date', 'hatched', 'arrived', 'weighed on', 'fed on', 'shed on'].includes(meaning);
