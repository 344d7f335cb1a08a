/** Which fields of a request are asked, given what was chosen so far. */

import type { Field } from '#core/calculations/describe.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import {
  lowLoadRequestFields,
  occlusionRequestFields,
  variationRequestFields,
} from '#core/prescribing/dose-request.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { occlusionScheme, occlusionSchemes } from '#core/prescribing/occlusion/schemes.ts';
import { mayAddLoad } from '#core/prescribing/variation/added-load.ts';
import { isHeld } from '#core/prescribing/variation/held.ts';
import { markedThing } from '#core/prescribing/variation/marked-things.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import type { Typed } from '../forms/typed.ts';
import { isOnMachine } from './place/machines.ts';

const fieldsOf: Readonly<Record<Method, readonly Field[]>> = {
  variation: variationRequestFields,
  'low-load': lowLoadRequestFields,
  occlusion: occlusionRequestFields,
};

const ofPneumatic = new Set(['cuffWidthCm', 'position', 'percent']);

/** Occlusion: what belongs to the kind of cuff and to the place; the limb follows from the exercise. */
const isAskedForOcclusion = (name: string, typed: Typed): boolean => {
  if (name === 'limb') return false;
  if (ofPneumatic.has(name)) return typed.cuffKind === 'pneumatic';
  if (name === 'tightness') return typed.cuffKind === 'elastic-wrap';
  return true;
};

const ofHold = new Set(['holdSeconds', 'mostHoldSeconds']);

/** A hold has its seconds and no tempo; a mark is asked where something carries one. */
const isAskedForVariation = (name: string, typed: Typed): boolean => {
  const exerciseId = typed.exerciseId ?? '';
  if (typed[name]) return true;
  if (ofHold.has(name)) return isHeld(exerciseId);
  if (name === 'secondsPerRepetition') return !isHeld(exerciseId);
  return name !== 'mark' || markedThing(exerciseId) !== null;
};

const asHolds: Readonly<Record<string, string>> = {
  repetitionsLow: say('fewest-holds'),
  repetitionsHigh: say('most-holds'),
  reserve: say('holds-in-reserve'),
};

/** Where an exercise is held, holds are counted; where it is done on a machine, which one has to be said. */
const worded = (field: Field, typed: Typed): Field => {
  if (field.name === 'machineId') return { ...field, optional: false };
  const about = isHeld(typed.exerciseId ?? '') ? asHolds[field.name] : undefined;
  return about === undefined ? field : { ...field, about };
};

/** What was typed stays in sight, so that nothing is sent or left out unseen. */
const isLoadAsked = (typed: Typed): boolean => mayAddLoad(typed.exerciseId ?? '') || Boolean(typed.addedKg);

export const askedFields = (
  method: Method,
  typed: Typed,
): { readonly first: readonly Field[]; readonly usual: readonly Field[] } => {
  const asked = fieldsOf[method]
    .map((field) => worded(field, typed))
    .filter(
      ({ name }) =>
        name !== 'method' &&
        (method !== 'occlusion' || isAskedForOcclusion(name, typed)) &&
        (name !== 'addedKg' || isLoadAsked(typed)) &&
        (name !== 'machineId' || isOnMachine(typed.exerciseId ?? '')) &&
        (method !== 'variation' || isAskedForVariation(name, typed)),
    );
  // For occlusion what is left out is refused, so it is asked at once.
  const isUsual = (field: Field) =>
    field.optional === true && (method !== 'occlusion' || field.name === 'knownOneRepMaxKg');
  return {
    first: asked.filter((field) => !isUsual(field)).map((field) => ({ ...field, optional: false })),
    usual: asked.filter(isUsual),
  };
};

/** What has to be answered first, then what the clinic has a figure for. */
export const allAsked = (method: Method, typed: Typed): readonly Field[] => {
  const { first, usual } = askedFields(method, typed);
  return [...first, ...usual];
};

/** What is sent: the method, what was read, and for occlusion the limb of the exercise. */
export const requestFrom = (
  method: Method,
  value: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => {
  if (method !== 'occlusion') return { ...value, method };
  const limb = exerciseById(String(value.exerciseId))?.limb;
  return { ...value, method, ...(limb ? { limb } : {}) };
};

export const schemeChoices = occlusionSchemes.map(({ id, title, citation }) => ({
  value: id,
  label: citation.mark === 'memory' ? say('scheme-from-memory', { title }) : title,
}));

/** Taking a scheme fills in its usual rest where nothing was typed. */
export const withScheme = (typed: Typed, path: string, text: string): Typed => {
  const rest =
    path === 'schemeId' && !typed.restSeconds ? occlusionScheme(text)?.restSeconds.usual : undefined;
  return { ...typed, [path]: text, ...(rest === undefined ? {} : { restSeconds: String(rest) }) };
};
