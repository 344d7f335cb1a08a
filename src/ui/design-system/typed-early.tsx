'use client';
/**
 * Tells the page's forms what was typed into them before their scripts had arrived. The browser shows it
 * and no form knows it: the next thing typed anywhere would wipe it away. Stands once in a frame.
 */
import { useEffect } from 'react';

type Field = HTMLInputElement | HTMLTextAreaElement;

/** One thing that was typed. */
interface Early {
  /** Tells the form of it. */
  readonly tell: () => void;
  /** Whether something chosen in this field since then stands in its place. */
  readonly isReplacedBy: (field: EventTarget | null) => boolean;
}

const isTick = (field: EventTarget | null): field is HTMLInputElement =>
  field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio');

/** React hears of a change only where the field differs from what it last saw there, so that is put back first. */
const textOf = (field: Field): Early => {
  const before = field.value;
  return {
    // Typed on in the same field: told as it then stands.
    isReplacedBy: () => false,
    tell: () => {
      const typed = field.value.startsWith(before) ? field.value : before;
      field.value = field.defaultValue;
      Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')?.set?.call(field, typed);
      field.dispatchEvent(new Event('input', { bubbles: true }));
    },
  };
};

const isOfGroup = (one: HTMLInputElement, other: HTMLInputElement): boolean =>
  other.type === 'radio' && one.name === other.name && one.form === other.form;

const tickOf = (field: HTMLInputElement): Early => {
  const isTicked = field.checked;
  return {
    isReplacedBy: (other) =>
      isTick(other) && (other === field ? field.checked !== isTicked : isOfGroup(field, other)),
    tell: () => {
      field.checked = !isTicked;
      field.click();
    },
  };
};

/** A radio that lost its tick to another of its group says nothing: the other one speaks for both. */
const isTickedEarly = (field: HTMLInputElement): boolean =>
  field.checked !== field.defaultChecked && (field.checked || field.type === 'checkbox');

const typedInto = (field: Field): readonly Early[] => {
  if (field.disabled) return [];
  if (!isTick(field)) return field.value === field.defaultValue ? [] : [textOf(field)];
  return isTickedEarly(field) ? [tickOf(field)] : [];
};

const chosenIn = (list: HTMLSelectElement): readonly Early[] => {
  const { value } = list;
  if (!value || list.selectedOptions[0]?.defaultSelected) return [];
  return [
    {
      isReplacedBy: (other) => other === list && list.value !== value,
      tell: () => {
        list.value = value;
        list.dispatchEvent(new Event('change', { bubbles: true }));
      },
    },
  ];
};

const typedEarly = (): readonly Early[] => [
  ...[...document.querySelectorAll<Field>('form input, form textarea')].flatMap(typedInto),
  ...[...document.querySelectorAll<HTMLSelectElement>('form select')].flatMap(chosenIn),
];

/**
 * Read at once, before anything is shown anew over it. Told a moment later: a press may itself be what wakes the
 * page, and told within it, the press would be told to nobody and lost. What is chosen in that moment stands.
 */
const tellTypedEarly = (): (() => void) => {
  let all = typedEarly();
  const chosen = ({ target }: Event) => {
    all = all.filter((early) => !early.isReplacedBy(target));
  };
  const stop = () => document.removeEventListener('change', chosen, true);
  document.addEventListener('change', chosen, true);
  const later = setTimeout(() => {
    stop();
    for (const { tell } of all) tell();
  });
  return () => {
    stop();
    clearTimeout(later);
  };
};

export const TypedEarly = () => {
  useEffect(tellTypedEarly, []);
  return null;
};
