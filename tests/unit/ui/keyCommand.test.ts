// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { keyCommand } from '../../../src/ui/keyCommand.ts';

const press = (key: string, held: Partial<KeyboardEvent> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  repeat: false,
  ...held,
});

describe('keyCommand', () => {
  it('takes a letter anywhere but where text is typed', () => {
    const field = document.createElement('input');
    expect(keyCommand(press('m'), document.body)).toBe('mark');
    expect(keyCommand(press('M'), document.body)).toBe('mark');
    expect(keyCommand(press('m'), field)).toBeNull();
    field.type = 'range';
    expect(keyCommand(press('m'), field)).toBe('mark');
  });

  it('keeps what may be a resonance with one key', () => {
    expect(keyCommand(press('k'), document.body)).toBe('keep');
  });

  it('makes one mark for one press, however long it is held', () => {
    expect(keyCommand(press('m', { repeat: true }), document.body)).toBeNull();
  });

  it('slides the column with the arrows, also held down, but not where they have a meaning of their own', () => {
    expect(keyCommand(press('ArrowRight'), document.body)).toBe('longer');
    expect(keyCommand(press('ArrowLeft', { repeat: true }), document.createElement('button'))).toBe(
      'shorter',
    );
    expect(keyCommand(press('ArrowLeft', { altKey: true }), document.body)).toBeNull();
    const field = document.createElement('input');
    for (const type of ['text', 'range', 'radio']) {
      field.type = type;
      expect(keyCommand(press('ArrowRight'), field)).toBeNull();
    }
    expect(keyCommand(press('ArrowRight'), document.createElement('select'))).toBeNull();
  });

  it('slides in finer steps with Shift, and as everywhere on the column’s own slider', () => {
    expect(keyCommand(press('ArrowRight', { shiftKey: true }), document.body)).toBe('longer-fine');
    const slider = document.createElement('input');
    slider.type = 'range';
    slider.setAttribute('data-column', '');
    expect(keyCommand(press('ArrowLeft'), slider)).toBe('shorter');
    expect(keyCommand(press('ArrowLeft', { shiftKey: true }), slider)).toBe('shorter-fine');
  });

  it('undoes and redoes as everywhere, and leaves a text field its own undo', () => {
    expect(keyCommand(press('z', { ctrlKey: true }), document.body)).toBe('undo');
    expect(keyCommand(press('z', { metaKey: true, shiftKey: true }), document.body)).toBe('redo');
    expect(keyCommand(press('y', { ctrlKey: true }), document.body)).toBe('redo');
    expect(keyCommand(press('z', { ctrlKey: true }), document.createElement('textarea'))).toBeNull();
  });
});
