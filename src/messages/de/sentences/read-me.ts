import type { readMe as english } from '#messages/en/sentences/read-me.ts';
import type { Same } from '#messages/sentence.ts';

/** What is said beside the tables of a record, in German. */
export const readMe = {
  files:
    'Für jede Art von Zeile gibt es eine Datei. Die Spalten heißen englisch, dictionary.csv nennt sie alle. In Dateien namens imported-… steht, was von anderswo kam. Sie lassen sich wieder einlesen.',
  written:
    'Komma, Anführungszeichen wo nötig, Zeilenende CR und LF, UTF-8 (RFC 4180). Leer heißt nicht beantwortet, nicht gefragt oder nicht bekannt, nie null.',
  errors:
    'Einträge bleiben, wie sie geschrieben wurden. Die Datei correction.csv nennt die, die falsch waren. Eine Zeile mit einem Wert in amends tritt an die Stelle jener Zeile.',
  formulas:
    'Manche Texte würden in einer Tabelle eine Rechnung beginnen. Ein solcher Text hat einen Apostroph davor. Zahlen stehen, wie sie sind.',
  'not-in-it': 'Nicht enthalten:',
  audit: 'wer die Akte geöffnet hat; das steht auf der eigenen Seite',
  auth_user: 'die Anmeldung; sie gehört nicht zur Akte',
  device: 'Prüfsummen eines Telefons und seiner PIN',
  invitation: 'Prüfsummen von Codes, die die Akte öffnen',
  calendar_feed: 'die Prüfsumme einer Adresse, die die nächsten Tage zeigt',
  draft: 'getippt und noch von niemandem eingetragen',
  worklist_item: 'die Arbeitsliste der Praxis; sie wird aus den Zeilen neu berechnet',
  incident: 'ein Eintrag der Praxis, den keine Regel liest',
  incident_change: 'ein Eintrag der Praxis, den keine Regel liest',
  worklist_standing: 'wird aus den Zeilen neu berechnet',
  worklist_strip: 'wird aus den Zeilen neu berechnet',
} as const satisfies Same<typeof english>;
