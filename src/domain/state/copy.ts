/**
 * A subject of one's own, filled in place before anyone else sees it.
 *
 * Merging two objects for each of 100,000 records is what a start would wait for; so a reducer
 * copies its subject once, takes all the records in, and hands it out read-only again.
 */
export type Copy<Subject> = { -readonly [Key in keyof Subject]: Subject[Key] };
