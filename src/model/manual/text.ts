/** Markdown in which `{grade.time}` stands for a quantity of `Manual.quantities`. */
export type Text = string
