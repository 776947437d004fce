/**
 * Temperature at which sizes are stated and measured, and at which joints are tightened and lash is set cold,
 * unless something else is said [K]: 20 °C. Source: ISO 1.
 */
export const REFERENCE_TEMPERATURE = 293.15;
