type Words = readonly [key: string, title: string, text: string]

/** What we start a studio with: plain words of our own, for what such agreements commonly settle; no published source. */
export const defaultClauses: readonly Words[] = [
	[
		'parties',
		'Who agrees',
		'This agreement is between {studio}, called “we” here, and {client}, called “you”. It is about the containers named below and what we put into them, season by season.',
	],
	[
		'term',
		'From when to when',
		'It begins on {start} and ends on {end}. It may begin in any season. It does not go on by itself: for another year we send you a new one.',
	],
	[
		'containers',
		'Places and containers',
		'We look after these places: {places}.\n\nThese containers belong to the agreement: {containers}. Whatever is not named here is agreed and billed apart. Tell us before our next visit when a container is moved, changed or gone, and tell us of any limit to what a deck, balcony, roof, bracket or railing may carry. Where that is in doubt, a licensed engineer has to say so.',
	],
	[
		'visits',
		'Visits',
		'These visits are included: {visits}. We choose the days within each season and move them when the weather asks for it; we tell you before. Further visits are agreed and billed apart.',
	],
	[
		'price',
		'Price',
		'The price before tax: {prices}. The fixed prices come to {total} in all.\n\nA fixed price covers the containers named for its season, the way there, taking out the season before, and one design. What you choose beyond it is shown with its price first and billed apart. A quoted season is priced in a proposal of its own; nothing of it goes in before you have approved it. Tax is added as the law asks.',
	],
	[
		'instalments',
		'How it is paid',
		'The fixed prices are paid in these instalments: {instalments}. Tax is added to each. Extras and quoted seasons are billed with their own proposals, never with these instalments.',
	],
	[
		'watering',
		'Who waters',
		'Between our visits the containers are watered by {waters}. Plants live in little soil here: they dry out sooner than a bed does, and drown where water cannot run off. Whoever waters looks at them in hot and in windy weather as well, and in winter when the soil is not frozen.',
	],
	[
		'belonging',
		'What is sold and what is lent',
		'Sold to you, and yours once it is paid: {sold}. Lent to you for a season, and ours all the time: {lent}. Each proposal says of each thing which it is. We take back what is lent when the season is over. What of it is lost or broken by more than use and weather is billed at what it costs to replace. What is your own stays yours, and we handle it with care.',
	],
	[
		'replacement',
		'Replacement',
		'What fails within a season because of us or because it was poor from the start, we replace without a charge. What fails for want of water where you water, by frost beyond what is usual for the place, by salt, animals or other people, we replace when you ask for it, at its price.',
	],
	[
		'substitution',
		'Substitutions',
		'Plants and materials are not always to be had. We may put in another of the same colour and habit without asking, and tell you of it. Anything else waits for a new answer from you.',
	],
	[
		'weather',
		'Weather and theft',
		'Storm, hail, hard frost, theft and mischief are nobody’s fault here: we mend what can be mended at the next visit, and replace what is gone when you ask for it, at its price. Secure what is yours as you would secure other things before your door. We may take down what the wind could make dangerous.',
	],
	[
		'access',
		'Access and outlets',
		'On the days of our visits we can reach the containers, park to unload near by, and use water. Where lights are agreed there is an outdoor outlet with a ground-fault interrupter, and you say who is asked for the key. A wasted way is billed apart. Tell us of what the house, the street or the town does not allow; doors, exits and walks stay clear as local rules ask.',
	],
	[
		'photographs',
		'Photographs',
		'We take pictures of our work before and after each visit, for you and for our own records. We show them to others without your name and address, and not at all when you ask us not to.',
	],
	[
		'lights',
		'Lights',
		'Lights that we hang for a season are taken down by {lights down}. They are made for a season and not for the whole year: nobody leaves them up for longer, and nobody adds to their cords.',
	],
	[
		'ending',
		'Ending it early',
		'You or we may end this agreement in writing, with {notice} of notice and the reason. Instalments that fall due until the day on which it ends remain due; later ones fall away. What was paid beyond that is paid back. We fetch what is lent. Whoever is harmed by a grave breach may end it at once.',
	],
	[
		'changes',
		'Changes',
		'This agreement changes by a new one alone, which says what is different and takes the place of this one once you have signed it. Until then this one holds. What we say by phone or by mail does not change it.',
	],
	[
		'records',
		'Signing and keeping',
		'We may both sign on a screen or on paper, and both keep the same text. You may have it on paper at any time.',
	],
	[
		'law',
		'The law that holds',
		'This agreement follows the law of {law}. If a part of it does not hold, the rest does.',
	],
]
