import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { FieldRow } from '../../../src/components/my-bike/FieldRow.tsx';
import { MyBike } from '../../../src/components/my-bike/MyBike.tsx';
import { AMP_FIELDS, BIKE_FIELDS } from '../../../src/rig/fields.ts';

const nothing = () => undefined;
const row = (
  field: (typeof BIKE_FIELDS)[keyof typeof BIKE_FIELDS] | (typeof AMP_FIELDS)['powerW'],
  text: string,
  error?: string,
) => renderToString(<FieldRow path="here" field={field} text={text} error={error} onType={nothing} onDone={nothing} />);

describe('MyBike', () => {
  it('is disabled in the built page, until what is saved has been read', () => {
    expect(renderToString(<MyBike />)).toMatch(/^<form class="bike"><fieldset disabled>/);
  });
  it('shows every field of a bike that nobody described', () => {
    const html = renderToString(<MyBike />);
    for (const { label } of Object.values(BIKE_FIELDS)) expect(html).toContain(label);
  });
});

describe('FieldRow', () => {
  it('says the unit, the range and what stands in for a number that nobody knows', () => {
    const html = row(BIKE_FIELDS.supplyRunningV, '');
    expect(html).toContain('From 12.0 to 15.5\u00A0V.');
    expect(html).toContain('Not known. 14.2\u00A0V stands in (usual: 13.5 to 14.6\u00A0V).');
    expect(html).toContain('aria-pressed="true"');
  });
  it('keeps what was typed when it cannot be used, and ties the reason to the field', () => {
    const html = row(AMP_FIELDS.powerW, 'a lot', 'Type a number.');
    expect(html).toContain('value="a lot"');
    expect(html).toContain('aria-invalid="true"');
    expect(html).toMatch(/aria-describedby="here-help here-note"/);
    expect(html).toContain('<p id="here-note" class="error">Type a number.</p>');
  });
  it('offers “I don’t know” beside the options of a choice, and marks it when nothing is known', () => {
    const html = row(BIKE_FIELDS.rearFitted, '');
    expect(html.match(/type="radio"/g)).toHaveLength(3);
    expect(html).toMatch(/<input[^>]*value(="")?[^>]*checked[^>]*>I don’t know/);
  });
});
