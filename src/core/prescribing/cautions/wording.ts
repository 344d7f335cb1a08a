/**
 * Number of the words that cautions are told to patients in, stored with a signed prescription: the row
 * holds what each caution is known by, and this says which words stood beside it when it was signed. It
 * goes up whenever a sentence of a caution changes, in any language.
 */
export const cautionWording = 8;
