export const visitKinds = ['install', 'refresh', 'watering', 'check', 'take-down'] as const
export type VisitKind = (typeof visitKinds)[number]

export const visitStates = ['to plan', 'planned', 'done', 'dropped'] as const
export type VisitState = (typeof visitStates)[number]

/** What a photo shows: a visit before and after the work, what is wrong, or the front of a place. */
export const photoSides = ['before', 'after', 'wrong', 'front'] as const
export type PhotoSide = (typeof photoSides)[number]
