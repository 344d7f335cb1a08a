'use client';
/**
 * Tells the page's forms what was typed into them before their scripts had arrived. The browser shows it
 * and no form knows it: the next thing typed anywhere would wipe it away. Stands once in a frame.
 */
import { useEffect } from 'react';

type Field = HTMLInputElement | HTMLTextAreaElement;

const isTick = (field: Field): field is HTMLInputElement =>
  field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio');

/** React hears of a change only where the field differs from what it last saw there, so that is put back first. */
const tellText = (field: Field): void => {
  const typed = field.value;
  field.value = field.defaultValue;
  Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')?.set?.call(field, typed);
  field.dispatchEvent(new Event('input', { bubbles: true }));
};

const tellTick = (field: HTMLInputElement): void => {
  field.checked = field.defaultChecked;
  field.click();
};

/** A radio that lost its tick to another of its group says nothing: the other one speaks for both. */
const isTickedEarly = (field: HTMLInputElement): boolean =>
  field.checked !== field.defaultChecked && (field.checked || field.type === 'checkbox');

const translate = (field: Field): void => {
  if (field.disabled) return;
  if (!isTick(field)) {
    if (field.value !== field.defaultValue) tellText(field);
  } else if (isTickedEarly(field)) tellTick(field);
};

export const TypedEarly = () => {
  useEffect(() => {
    for (const field of document.querySelectorAll<Field>('form input, form textarea')) translate(field);
    for (const list of document.querySelectorAll<HTMLSelectElement>('form select'))
      if (list.value && !list.selectedOptions[0]?.defaultSelected)
        list.dispatchEvent(new Event('change', { bubbles: true }));
  }, []);
  return null;
};
