/** What a look back is asked with, from plain data: settings of the decision rules, and usual values of joints. */
import type { UsualValuesByJoint } from '#core/decision/baseline/stood-all-along.ts';
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { usualValueFields } from '#core/decision/what-if/what-if-fields.ts';
import { joints as allJoints, type Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { checkSettings, type SettingValues } from '#core/sources/clinic-setting.ts';
import { inputSchema } from './from-descriptor.ts';
import { refusalsFromIssues } from './refusals.ts';

interface MovedValues {
  readonly settings: SettingValues;
  readonly joints: UsualValuesByJoint;
}

type MovedOrRefused = MovedValues | { readonly refusals: readonly string[] };

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** As the page names it; the id where it is none of ours. */
const titleOf = (id: string): string => engineSettings.find((one) => one.id === id)?.title ?? id;

/** A refusal names a field as it is sent; whoever typed it knows it by its words. */
const named = (reason: string): string =>
  usualValueFields.reduce((said, { name, about }) => said.replaceAll(name, `"${about}"`), reason);

const refusedSettings = (values: Readonly<Record<string, unknown>>): readonly string[] => {
  const wrong = Object.entries(values).filter(([, value]) => typeof value !== 'number');
  if (wrong.length > 0) return wrong.map(([id]) => `"${titleOf(id)}" is a number.`);
  return checkSettings(engineSettings, { ...engineDefaults, ...(values as SettingValues) }).map(
    ({ code, field, reason }) =>
      code === 'unknown-field'
        ? `"${field.replace('choices.', '')}" is not a setting of the decision rules.`
        : reason,
  );
};

const refusedJoints = (values: unknown): readonly string[] => {
  if (!isPlain(values)) return ['"joints" is an object of usual values by joint.'];
  return Object.entries(values).flatMap(([joint, own]) => {
    if (joint === '') return ['Choose the joint that these values are of.'];
    if (!allJoints.includes(joint as Joint)) return [`"${joint}" is not a joint.`];
    const parsed = inputSchema(usualValueFields).safeParse(own);
    return parsed.success
      ? []
      : refusalsFromIssues(parsed.error.issues, usualValueFields, own).map(
          ({ reason }) => `${jointInWords(joint as Joint)}: ${named(reason)}`,
        );
  });
};

/** Nothing moved is refused as well: it would show that nothing changes nothing. */
export const movedFrom = (read: unknown): MovedOrRefused => {
  if (!isPlain(read)) return { refusals: ['Give an object of settings, such as {"severe-pain": 7}.'] };
  const { joints = {}, ...settings } = read;
  const refusals = [...refusedSettings(settings), ...refusedJoints(joints)];
  if (refusals.length > 0) return { refusals };
  const isNothing = Object.keys(settings).length === 0 && Object.keys(joints as object).length === 0;
  if (isNothing) return { refusals: ['Name a setting, or a usual value of a joint, to be moved.'] };
  return { settings: settings as SettingValues, joints: joints as UsualValuesByJoint };
};
