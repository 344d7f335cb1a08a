/** What is said beside the tables of a record, and of each table that is left out why. */
export const readMe = {
  files:
    'A file for each kind of row, and dictionary.csv with every column of all of them, in English as the columns are named. Files whose name begins with "imported-" hold what came from elsewhere, in the columns in which it can be imported again.',
  written:
    'Comma, quotes where needed, lines ended by CR and LF, UTF-8 (RFC 4180). Empty means not answered, not asked or not known, never zero.',
  errors:
    'Entries stay as they were recorded: the file "correction" names those entered in error, and an entry that "amends" another replaces it.',
  formulas:
    'A text that a spreadsheet would take for a formula has an apostrophe before it, also in the middle of a text after a line end, a semicolon or a tab; numbers are as they are.',
  'not-in-it': 'Not in it:',
  audit: 'who opened the record, shown to the patient on the own page',
  auth_user: 'the sign-in, not the record',
  device: 'digests of a phone and its PIN',
  invitation: 'digests of codes that open the record',
  calendar_feed: 'the digest of an address that shows the days ahead',
  draft: 'typed and not yet recorded by anybody',
  worklist_item: 'the clinic’s worklist, worked out anew from the rows below',
  incident: 'an entry of the clinic, read by no rule',
  incident_change: 'an entry of the clinic, read by no rule',
  worklist_standing: 'worked out anew from the rows',
  worklist_strip: 'worked out anew from the rows',
} as const;
