import type { Sentences } from '../../telling.ts';

/** What a decision changes in a dose, and the limits that stand, in German. Read by nobody yet. */
export const changeSentences: Sentences = {
  '{=title}: stop until we have spoken with you.':
    '{=title}: nicht mehr machen, bis wir mit Ihnen gesprochen haben.',
  '{=title}: stay here, do the same again.': '{=title}: Bleiben Sie dabei, machen Sie dasselbe noch einmal.',
  '{=title}: do the same again. Your physiotherapist is looking at a change.':
    '{=title}: Machen Sie dasselbe noch einmal. Ihre Physiotherapie sieht sich eine Änderung an.',
  '{=title}: {=changes}.': '{=title}: {=changes}.',
  '{=new} instead of {=old}': '{=new} statt {=old}',
  '{#new} kg instead of {#old} kg': '{#new} kg statt {#old} kg',
  '{#new} sets instead of {#old}': '{#new} statt {#old} Sätze',
  '{#new} repetitions instead of {#old}': '{#new} statt {#old} Wiederholungen',
  'There is a limit for your {=joint}: {=kind}. Keep to it as {author} told you.':
    'Es gilt eine Grenze, {=joint}: {=kind}. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'weight-bearing': 'Gewicht darauf',
  'range of movement': 'wie weit es sich bewegen darf',
  load: 'das Gewicht',
  impact: 'Stöße',
  nothing: 'nichts',
};
