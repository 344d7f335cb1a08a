/** What is said beside the tables of a record, and of each table that is left out why. */
export const readMe = {
  files:
    'There is a file for each kind of row. Names of columns are English, and dictionary.csv lists them all. Files named imported-… hold what came from elsewhere. They can be taken in again.',
  written:
    'Comma, quotes where needed, lines ended by CR and LF, UTF-8 (RFC 4180). Empty means not answered, not asked or not known, never zero.',
  errors:
    'Entries stay as they were written. The file correction.csv names those that were wrong. A row with a value in amends takes the place of that row.',
  formulas:
    'Some texts would start a sum in a spreadsheet. Such a text has an apostrophe before it. Numbers are as they are.',
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
