import fc from "fast-check";

/** One seed for every property, so that a run can be repeated; BATTERBOARD_SEED tries another. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env.BATTERBOARD_SEED ?? 20270306) });
