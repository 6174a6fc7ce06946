/** A form came a second time: what it would have done again is undone with the transaction. */
export class SentBefore extends Error {}
