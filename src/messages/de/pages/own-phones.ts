import type { words as english } from '#messages/en/pages/own-phones.ts';
import type { Same } from '#messages/sentence.ts';

/** A patient's own phones, and ending one that was lost, in German. */
export const words = {
  'phones.title': 'Ihre Telefone',
  'phones.none': 'Für Sie ist kein Telefon eingerichtet.',
  'phones.each-time': 'Wurde ein Telefon mehrmals eingerichtet, steht es hier auch mehrmals.',
  'phones.set-up': 'Telefon, eingerichtet am {when}',
  'phones.this': '{which} (dieses Telefon)',
  'phones.opened': 'Zuletzt mit der PIN geöffnet am {when}',
  'phones.no-pin': 'Dort wurde noch keine PIN gewählt',
  'phones.locked': 'Die PIN wurde fünfmal falsch eingegeben und öffnet nichts mehr',
  'phones.ended-by-you': 'Sie haben es am {when} abgemeldet. Seine PIN öffnet nichts mehr.',
  'phones.ended-by-clinic': 'Ihre Praxis hat es am {when} abgemeldet. Seine PIN öffnet nichts mehr.',
  'phones.lost': 'Ich habe dieses Telefon verloren',
  'phones.sure': 'Dieses Telefon für immer abmelden?',
  'phones.does':
    'Das Telefon wird abgemeldet, seine PIN öffnet nichts mehr, und es kann Ihrer Praxis nichts mehr senden.',
  'phones.erases-nothing':
    'Auf dem Telefon wird nichts gelöscht, und das Telefon selbst wird nicht gesperrt.',
  'phones.unsent':
    'Fertige Antworten, die noch nicht gesendet sind, bleiben auf dem Telefon. Sie sind für Ihre Praxis verschlüsselt: Dort kann sie niemand lesen. Ihre Praxis bekommt sie nur, wenn Sie das Telefon wiederfinden und neu einrichten.',
  'phones.still-seen':
    'Auf dem Telefon bleiben auch die Seiten für Tage ohne Netz und was Sie angefangen und nicht abgeschlossen haben. Wer das Telefon öffnen kann, sieht das vielleicht noch, wenn es kein Netz hat.',
  'phones.new-phone':
    'Für ein neues Telefon brauchen Sie eine Einladung von Ihrer Praxis, auch für dieses, wenn Sie es wiederfinden. War es Ihr einziges, rufen Sie Ihre Praxis an.',
  'phones.end': 'Ja, dieses Telefon abmelden',
  'phones.keep': 'Nein, so lassen',
  'phones.ended-now': 'Das Telefon ist abgemeldet',
  'phones.ended-before': 'Dieses Telefon war schon abgemeldet',
} as const satisfies Same<typeof english>;
