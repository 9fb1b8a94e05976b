/** Cooks the field's lines and draws beside the page, one at a time, as it is asked: what is asked for no more is never begun. */
import { expose } from 'comlink';
import { defaultKit, type Kit } from '../../../../core/pan/kit.ts';
import { type PreparedKit, prepareKit } from '../../../../core/pan/preparedKit.ts';
import { type Knots, knotsDrawn } from '../../../../core/planning/field/band.ts';
import type { Lever } from '../../../../core/planning/field/levers.ts';
import {
  createField,
  type Field,
  type FieldLine,
  type FieldSpec,
  usualField,
} from '../../../../core/planning/field.ts';
import { defaultRequest } from '../../../../core/planning/request.ts';

interface Open {
  readonly kitKey: string;
  readonly prepared: PreparedKit;
  /** All that the cooks of a field have in common, beside the slider's lever. */
  readonly key: string;
  readonly spec: FieldSpec;
  readonly field: Field;
  /** How often the slider has moved: what it left behind is kept, and not without end. */
  readonly further: number;
}

const mostFurther = 30;
let open: Open | undefined;

/** @param slid the lever of the slider, which alone may change without the field being cooked anew */
function opened(spec: FieldSpec, kit: Kit, slid: Lever | undefined): number {
  const kitKey = JSON.stringify(kit);
  const prepared = open?.kitKey === kitKey ? open.prepared : prepareKit(kit);
  const key = JSON.stringify([kitKey, { ...spec, request: { ...spec.request, ...(slid && { [slid]: 0 }) } }]);
  const goesOn = open !== undefined && slid !== undefined && open.key === key && open.further < mostFurther;
  const field = open && goesOn ? open.field.further({ [slid]: spec.request[slid] }) : createField(spec, prepared);
  open = { kitKey, prepared, key, spec, field, further: open && goesOn ? open.further + 1 : 0 };
  return field.sucroseKg;
}

function current(): Open {
  if (!open) throw new Error('no field is open');
  return open;
}

const fieldCook = {
  open: opened,
  line: (at: number): FieldLine => current().field.line(at),
  /** @param number which of the possible kits; none: the middle of all */
  knots(number?: number): Knots {
    const { spec, prepared, field } = current();
    return knotsDrawn(spec, prepared, field.sucroseKg, number);
  },
};

export type FieldCook = typeof fieldCook;

expose(fieldCook);

// One line of some field, so that the code is compiled by the time that somebody asks for theirs: it takes half the time to the first paint. Who
// has asked while this was loaded is answered first.
setTimeout(() => {
  if (!open) createField(usualField(defaultRequest), prepareKit(defaultKit)).line(0);
});
