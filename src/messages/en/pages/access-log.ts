/** Who opened the record. */
export const words = {
  'opened.text': 'Everyone at your clinic who looked at your record or wrote in it, newest first.',
  'opened.none': 'Nobody has opened your record yet.',
  'opened.unknown': 'Someone the clinic no longer lists, or the program itself',
  'opened.looked': { by: 'count', one: 'Looked once', other: 'Looked {count} times' },
  'opened.wrote': { by: 'count', one: 'wrote once', other: 'wrote {count} times' },
  'opened.wrote-only': { by: 'count', one: 'Wrote once', other: 'Wrote {count} times' },
  'opened.with-reason': 'From outside your care team, with a written reason',
  'opened.handed-on': 'Passed on your record as a file, with your consent, to',
  'opened.own-copy': 'My record as a PDF',
  'opened.own-copy-csv': 'My record as tables (CSV, in a ZIP file)',
  'opened.own-copy-fhir': 'My record for another clinic’s program (FHIR)',
  'opened.own-copy-calendar': 'My days ahead for a calendar',
  'opened.own-copy-calendar-hint':
    'What is planned for the next eight weeks. It does not change when your plan changes: get a new one then.',
  'opened.own-copy-unlocked': 'These files are not locked. Whoever has them can read them.',
  'opened.own-copy-hint': 'For you to keep or print. You need not ask anybody.',
  'opened.ask': 'Is a name wrong here? Ring your clinic and ask.',
} as const;
