/** What is wrong with a code or a PIN before it is tried: the same in the browser and on the server. */
import './words.ts';
import type { Said } from '#ui/language/said.ts';

export const codeProblem = (code: string): Said | null =>
  code.trim().length < 8 ? { field: 'code', text: (say) => say('join.no-code') } : null;

export const pinProblem = (pin: string): Said | null =>
  /^\d{6}$/.test(pin) ? null : { field: 'pin', text: (say) => say('join.pin-shape') };

export const newPinProblem = (pin: string, again: string): Said | null =>
  pinProblem(pin) ?? (pin === again ? null : { field: 'again', text: (say) => say('join.pin-differs') });
