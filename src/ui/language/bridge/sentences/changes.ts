import type { Sentences } from '../translator.ts';

/** What a decision changes in a dose, in German. Read by nobody yet. */
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
};
