/** A value that JSON carries as it is. */
export type Constant =
  | string
  | number
  | boolean
  | null
  | readonly Constant[]
  | { readonly [key: string]: Constant };
