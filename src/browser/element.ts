/** A new element with what stands in it. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  ...inside: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name)
  made.append(...inside)
  return made
}
