import { Text, View } from '@react-pdf/renderer'
import { hues, line, sheet } from '../paper'
import type { AgreementView } from './view'

type Of = { readonly view: AgreementView }

export function Places({ view }: Of) {
	return (
		<View>
			<Text style={sheet.h2} minPresenceAhead={60}>
				Places and containers
			</Text>
			{view.places.map((place) => (
				<View key={place.key} style={sheet.ruled}>
					<View style={{ width: 178, paddingRight: 14 }}>
						<Text style={sheet.bold}>{place.name}</Text>
						<Text style={sheet.soft}>{place.address}</Text>
					</View>
					<View style={sheet.main}>
						{place.containers.map(({ key, name, words }) => (
							<Text key={key}>
								{name} <Text style={sheet.soft}>({words})</Text>
							</Text>
						))}
					</View>
				</View>
			))}
		</View>
	)
}

const columns = { season: 104, containers: 146, price: 90 } as const

export function Seasons({ view }: Of) {
	return (
		<View>
			<Text style={sheet.h2} minPresenceAhead={80}>
				Seasons
			</Text>
			<View style={[sheet.row, sheet.soft, { paddingBottom: 3 }]} minPresenceAhead={40}>
				<Text style={{ width: columns.season }}>Season</Text>
				<Text style={{ width: columns.containers }}>Containers</Text>
				<Text style={sheet.main}>Visits</Text>
				<Text style={[sheet.right, { width: columns.price }]}>Price before tax</Text>
			</View>
			{view.seasons.map(({ key, quarter, name, containers, visits, price }) => (
				<View key={key} style={sheet.ruled} wrap={containers.length > 900}>
					<View style={{ width: columns.season, paddingRight: 10, flexDirection: 'row' }}>
						<View style={{ width: 6, height: 6, marginTop: 4, marginRight: 6, backgroundColor: hues[quarter] }} />
						<Text style={[sheet.bold, sheet.main]}>{name}</Text>
					</View>
					<Text style={{ width: columns.containers, paddingRight: 12 }}>{containers}</Text>
					<Text style={[sheet.main, { paddingRight: 10 }]}>{visits}</Text>
					<Text style={[sheet.right, { width: columns.price }]}>{price}</Text>
				</View>
			))}
			<View style={[sheet.ruled, sheet.bold, { borderTop: `1pt solid ${line}` }]} wrap={false}>
				<Text style={sheet.main}>Fixed prices together, before tax</Text>
				<Text style={sheet.right}>{view.total}</Text>
			</View>
		</View>
	)
}
