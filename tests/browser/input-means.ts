/**
 * Two hands on a form: one points, one has a keyboard only. Each counts what a person does on
 * purpose: a field filled, an answer chosen, a button or link pressed. Going from one control to
 * the next by Tab is no action of its own and is counted apart.
 */

import { expect, type Locator, type Page } from '@playwright/test';

export interface Hand {
  readonly type: (field: Locator, text: string) => Promise<void>;
  readonly choose: (radio: Locator) => Promise<void>;
  readonly tick: (box: Locator) => Promise<void>;
  readonly pick: (list: Locator, option: string) => Promise<void>;
  readonly press: (button: Locator) => Promise<void>;
  readonly actions: () => number;
  /** Presses of Tab; always 0 for the hand that points. */
  readonly steps: () => number;
}

export const pointingHand = (): Hand => {
  let actions = 0;
  const counted = async (act: Promise<unknown>) => {
    await act;
    actions += 1;
  };
  return {
    type: (field, text) => counted(field.fill(text)),
    choose: (radio) => counted(radio.check()),
    tick: (box) => counted(box.check()),
    pick: (list, option) => counted(list.selectOption({ label: option })),
    press: (button) => counted(button.click()),
    actions: () => actions,
    steps: () => 0,
  };
};

const mostSteps = 120;

export const keyboardHand = (page: Page): Hand => {
  let [actions, steps] = [0, 0];
  const has = (control: Locator) => control.evaluate((node) => node === document.activeElement);
  /** Along the order of the page, as Tab goes; a control that Tab never reaches fails the test. */
  const reach = async (control: Locator) => {
    await expect(control).toBeVisible();
    for (let taken = 0; !(await has(control)); taken++) {
      if (taken === mostSteps) throw new Error(`Tab does not reach ${control}.`);
      await page.keyboard.press('Tab');
      steps += 1;
    }
    actions += 1;
  };
  return {
    type: async (field, text) => {
      await reach(field);
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.insertText(text);
    },
    // An answer in a group that has none is reached at its first; the arrows go on from there.
    choose: async (radio) => {
      const name = await radio.getAttribute('name');
      await reach(page.locator(`input[name="${name}"]`).first());
      await page.keyboard.press('Space');
      for (let taken = 0; !(await has(radio)) && taken < 12; taken++) await page.keyboard.press('ArrowDown');
      await expect(radio).toBeChecked();
    },
    tick: async (box) => {
      await reach(box);
      await page.keyboard.press('Space');
      await expect(box).toBeChecked();
    },
    pick: async (list, option) => {
      await reach(list);
      await page.keyboard.type(option);
      await expect(list.locator('option:checked')).toHaveText(option);
    },
    press: async (button) => {
      await reach(button);
      await page.keyboard.press('Enter');
    },
    actions: () => actions,
    steps: () => steps,
  };
};
