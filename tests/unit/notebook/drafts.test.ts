// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { draftPlace } from '../../../src/notebook/draftPlace.ts';
import { Drafts } from '../../../src/notebook/drafts.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  localStorage.clear();
});

describe('Drafts', () => {
  it('keep what is typed by experiment and field, for the next visit, until it is taken', () => {
    const drafts = new Drafts(draftPlace('drafts'));
    drafts.set('one', 'new length', '15.');
    drafts.set('one', 'note', 'Water was warm');
    drafts.set('two', 'new length', '16');
    const later = new Drafts(draftPlace('drafts'));
    expect(later.get('one', 'new length')).toBe('15.');
    later.set('one', 'new length', null);
    expect(drafts.get('one', 'new length')).toBeNull();
    expect(drafts.get('one', 'note')).toBe('Water was warm');
    drafts.forget('one');
    expect(later.get('one', 'note')).toBeNull();
    expect(later.get('two', 'new length')).toBe('16');
  });

  it('take an empty field for something typed', () => {
    const drafts = new Drafts(draftPlace('drafts'));
    drafts.set('one', 'note', '');
    expect(drafts.get('one', 'note')).toBe('');
  });

  it.each(['{"one":', '[]', 'null', '{"one":[1]}', '{"one":{"note":7}}'])('start anew from %s', (text) => {
    localStorage.setItem('drafts', text);
    const drafts = new Drafts(draftPlace('drafts'));
    expect(drafts.get('one', 'note')).toBeNull();
    drafts.set('one', 'note', 'x');
    expect(drafts.get('one', 'note')).toBe('x');
  });

  it('of experiments and fields named like an object’s own parts are plain text', () => {
    const drafts = new Drafts(draftPlace('drafts'));
    drafts.set('one', 'note', 'x');
    expect(drafts.get('one', 'constructor')).toBeNull();
    expect(drafts.get('constructor', 'name')).toBeNull();
    drafts.set('one', '__proto__', 'x');
    expect(drafts.get('two', '__proto__')).toBeNull();
  });

  it('stay in the tab where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('no', 'QuotaExceededError');
      },
    });
    const drafts = new Drafts(draftPlace('drafts'));
    drafts.set('one', 'note', 'x');
    expect(drafts.get('one', 'note')).toBe('x');
    vi.unstubAllGlobals();
    expect(localStorage.getItem('drafts')).toBeNull();
  });

  it('of the fifty experiments typed into last are kept', () => {
    const drafts = new Drafts(draftPlace('drafts'));
    for (let index = 0; index < 60; index += 1) drafts.set(`id${index}`, 'note', 'x');
    expect(drafts.get('id9', 'note')).toBeNull();
    expect(drafts.get('id10', 'note')).toBe('x');
    expect(drafts.get('id59', 'note')).toBe('x');
  });
});
