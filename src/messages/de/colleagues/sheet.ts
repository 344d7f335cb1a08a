/** What papers of parts say beside the words of the documents they are made from, in German. */
import type { words as english } from '#messages/en/colleagues/sheet.ts';
import type { Same } from '#messages/sentence.ts';

export const words = {
  telephone: 'Telefon {phone}',
  about: '{name}, geboren am {on}',
  signs: 'Warnzeichen, bei denen sofort aufgehört wird (Wortlaut für Behandelte)',
  'signs-emergency': 'Sofort {number} anrufen: {what}',
  'signs-same-day':
    'Noch am selben Tag mit uns sprechen, {phone}, oder {number} anrufen, wenn niemand abnimmt: {what}',
  'signs-routine': 'Die Praxis anrufen, {phone}: {what}',
  'none-at-end': 'Dieses Papier gibt es nicht: Die Behandlung geht weiter, oder die Person ist verstorben.',
  'handed-over': 'Kein Blatt für jemanden, der an andere übergeben wurde: Jetzt gilt deren Wort.',
  handover: 'Übergabe',
  care: 'Behandlung',
  urgent: 'Dringend',
  limits: 'Grenzen',
  overrides: 'Anders entschieden',
  'no-caution': 'Keiner ist erfasst.',
  'state-in-care': 'In Behandlung',
  'state-on-break': 'Unterbrochen',
  'state-closed': 'Abgeschlossen',
  'word-progress': 'steigern',
  'word-hold': 'beibehalten',
  'word-ease-back': 'verringern',
  'word-pause': 'aussetzen',
} as const satisfies Same<typeof english>;
