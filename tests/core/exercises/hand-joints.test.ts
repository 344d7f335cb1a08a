/** Thumb base and finger joint are followed by themselves, and none of the hand drops out of sight by it. */
import { describe, expect, it } from 'vitest';
import { jointsLoaded, jointsToTell, mainJoints } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';

describe('joints of the hand', () => {
  it('work of the hand is gated by each joint of it on that side and on no other', () => {
    expect(jointsLoaded('ball-squeeze', 'left').toSorted()).toEqual([
      'left-finger-joint',
      'left-hand',
      'left-thumb-base',
      'left-wrist',
    ]);
    expect(mainJoints('ball-squeeze', 'left')).toContain('left-thumb-base');
    expect(jointsLoaded('curl-seated', 'right')).toContain('right-finger-joint');
    expect(jointsLoaded('heel-raise-seated', 'both').join()).not.toMatch(/thumb|finger|hand/);
  });

  it('of a hand only the joint is told that the exercise names, and others as they are', () => {
    const told = (joints: readonly Joint[]) => jointsToTell('ball-squeeze', 'left', joints);
    expect(told(jointsLoaded('ball-squeeze', 'left'))).toEqual(['left-hand', 'left-wrist']);
    expect(told(['left-hand', 'right-thumb-base', 'neck'])).toEqual([
      'left-hand',
      'right-thumb-base',
      'neck',
    ]);
    expect(jointsToTell('no-such-exercise', 'left', ['left-thumb-base'])).toEqual(['left-thumb-base']);
  });

  it('names a joint of two words without a hyphen', () => {
    expect(jointInWords('left-thumb-base')).toBe('left thumb base');
    expect(jointInWords('low-back')).toBe('low back');
  });
});
