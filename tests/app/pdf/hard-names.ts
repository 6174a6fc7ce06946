/** Invented, in letters of the Unicode Standard's code charts that one narrow font has to draw. */
export const hardNames = [
	...['Žofie Černá-O’Shea', 'Zażółć Gęślą-Jaźń', 'Győző Őry', 'Þóra Æsisdóttir', 'Şişli İpek Ağaoğlu', 'Ĵaŭdo Ŝuŝĥ'],
	...['Đặng Thị Ngọc Ưởng', 'Nguyễn Văn Hậu', 'Māra Ķēniņa', 'Jurgis Šėžiūnas', 'Ștefan Țurcă', 'Weiß & Söhne'],
	...['Ελένη Παπαδοπούλου', 'Ἀλέξανδρος Ὠκεανός', 'Ждан Щукин-Ёлкин', 'Їжакевич Ґудзь', 'Ђорђе Љубичић'],
	...['Անի Գրիգորյան', 'ნინო ქავთარაძე', 'שרה לוי', 'نور الهدى', 'Nell “Nan” Quirke—Fairweather'],
]
