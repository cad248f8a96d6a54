// Made by build/learn-sayings from tests/sayings; see DEVELOPERS.md. Not to be edited.
// clang-format off
#include "talk/evidence.hpp"

namespace nutward::talk {

std::string_view learnt_table() {
  static constexpr char table[] =
R"~(fit place shift all-right slots cuts cut-list labels stock supply order-list due jobs job persons whose press level suits lots balance saved tin-care held spring-back machines bookings stages hours agenda promise orders suppliers history help use hold let-go add scrap measured came-short finished pressed rechecked new-job set-due cancel-job define-wire receive reorder-level open-hours close-day open-extra set add-receiver drop-receiver new-person map-uid unmap-uid change-person retire-person return-person give-job free-job count weigh calibrate correct cut-from cut-new pulled from-lot slot-size shifted board-width lost remade handful measured-handful scrap-several use-several set-aside let-all-go define-bar drop-bar press-support wire-size reading crown-gap cause stands-low last-fret neck reseated glued levelled define-machine change-machine drop-machine machine-down machine-up stage-machine stage-minutes book cancel-booking start stop own-hours day-off day-on reopen-day priority after look-again ordered arrived order-promised cancel-order define-supplier change-supplier drop-supplier undo -
$words	a about abraded abrasive acceptable according account across action add additional address advise advised after afternoon again against agenda ago ahead ai all allowed alone along already also although altogether always am amend an and anew annual annulled another answer any anybody anymore anyone anything anyway anywhere apiece applied apply appropriate arbor archive are around arrive arrived as aside ask asked asking assigned at attributable audit available average away back bad bag balance bandsaws banjaxed bank bar barbs bare bars batch be beacon became because become becomes been before begin begun behind being believe bell belong belongs below belt bend bender bending beneath bent best better between beyond big bin binding binned bins bit bits bless block board body bodyward book booked booking bookings books booth boss both bother bottom bottomed bottoms bought bound box boxes brand breadth break bridging bring broke broken brought buffer building bunch business busy but buy by cake calibrate caliper calipers call called callipers calls came can cancel cancelled cancels care carried carry caul cause change changed check checked christmas chuck chucked cittern clamp clamped clean cleaned cleaning clear clock close closed closing closure cloudevents cm coffee coil coils colleague come comes coming command commenced commit complete completed completely completion compound computer concerning confirm considered copper corners correct cost costs could count counted counting counts cousin cracked cradle cradled create crown crowning crowns current currently curved customer customers cut cuts cutting date dates daughters day days dead deadline deadlines dec december deep deeper define definitively delete deliver delivered deliveries delivery dentist depth designated desk determined devil did dimensions dirt dirty discarded dispose distance divided division do does doing done door doors down drawer drawers dressed dressing drill drop dropped drops dry due dulcimer duration dust e e'er each earlier earliest early eat edda edge edges else elsewhere em employed empty end ended ends enough enter entered entirely entry equipment error established eur europe euros eve even evening ever every everybody everyone everything exactly example exceptionally exist existing expected explain extra eye fair fall falling falls fanned far favour feeler feet fell fella ferro fetch few fewer fewest figure file filed filing filled final finally find fine fingerboard finished firewood firm fit fixed fixing flat floor folks following fool foot for forever forget fortnight forward found free fresh fret frets fretted fretting fretwire fri friday fridays from ft full function furnisher further g gander gap gauge gave get gets getting gig give given gives glue glued go goes going gone gong gonna good goods got grab grabs gram grams grand greta grip groove grooves gross ground group guitars had hair half hammer hand handful hands hang happened happens harbour hard hardly has have having he head hear height held help henceforth her here hereby hers high higher highs him himself hired his history hitting hold holding holds holiday holidays hollow home hook hour hours house how how'd http https humidity hump hundredths hurry hurts i i'd i've identify idle if ill in inch inches included including inspection instead instructions instrument interrupted into inventory is it item items its january jig job jobs jointer joke jumbo just k keep keeping keeps kept kettle kg kill kind kindly kinked kitchen klara knock know knows labels lack lacks lady laid lamp landed lane laptop large last lasts late later latest lay lb lead leaks least leave leaving left leftover leftovers length lengths less let level levelled levelling lick lie lies lift lifted light like limit lindwurm line list listens little load loads log login logs long longer look looked looking looks loose loss lost lot lots love lovely low lower lows lunch lying m machine machines made make makes making man manner many maple mark marks married mass match mate matej material materials matter may maybe me mean meant measure measured measures measuring member metal metals metre metres mic'd micrometer middle might mil millimetre millimetres mind mine mini minimum minute minutes mirjam miscounted missing mistake mm moment mon monday mondays money month more morning morrow most move moved mr ms much must my myself name named namely near nearly necessary neck necks need needing needs neighbours never new newly news next nice nickel night nip nipped nipping no nobody none noon normal not note nothing notice noticed notices november now number numbers nut nutward o'clock oak observed occupies october odila of off offcut office often ok okay old on once ones only open opened opening operational or order ordered ordering orders other others ought oughta our out outstanding outta oven over overall overdue overview owing own owner pack packs paid pair paper parcel parlour partial particular pass passes past pavle pay people per percent perhaps permitted person persons phone pick picked picture piece pieces pig pity place placed places plain plan planed planned plate play please plumber pocket point polish polishing pool poor pop popped porch position positions possess possible pounds preparation pressed pressing price prices print printable printer priority produce produced program progress promise promised proud provide public pull pulled pulling purchase push pushed put quantity quarter question queue quick quicker quickly quiet quit quote rack radius ram ran rang range rated rather raw re reach read reading readings reads ready really reason receive received receiver receivers recheck rechecked rechecking rechecks reckon record recorded refret refrets regarded register regret regular reinspection reinstate rejoined release relief relocated remade remain remainder remaining remains remake remember reminders remove removed rename reorder replace replaced replacement report reported reports require requires reseat reseated reseating reservation reservations reserve reserved respectively responsible rest result retained retire retired retirement retiring return returned reuse reversed revoke rid right ring rings rock rocker rocking rocks rod rods rok role roll rough round rounded rounding router rubbish ruined rule ruler run running runs rush s said same sanded sanding sat saturday saturdays save saved savings saw sawed sawn say says scale schedule scheduled scrap scrapped scratch screen scrub seat seated seating see seems sell sells send sending sent september service set setting settings setup shall shallow shape she she'll sheet shelf shift shifted shimmed shop shopping short should show showed shows shuffle shut sick side sill silver since single sister sit sits sitting size sizes slid slide slips slot slots small smallest snapped so soft sold sole solid some somebody someone something soon soonest sorry sort sorts soul source space span spare spoilt spoken spool spot sprang spray spring springback springing sprung square squeeze squeezed staff stage stages stainless stand standard standing stands start started starting starts state status stay stayed stays steady steel step steps stick stickers sticking sticks still stock stocktaking stone stood stop stopped stopping stops straight straightedge straightened street strike strings struck stuff such sufficient suit suitable suits sum summarise sums sunday sundays sunk supplier suppliers supply suppose supposed sure table tablet take taken takes taking talk tang tare tell tenths terms text than that the their them then there these they they'd they're they've thick thickness thin thing things think this those threw through throw thrown thu thursday thursdays tight till time times tin to today together told tomorrow too took tools top tops torn tossed total touch touched touching toward treat treble trim true trued truing trying tue tuesday tuesdays turn turned turning turns twice typed typical uid un under undo unfinished unmeasured until untouched up upon urban urgent url us usable use used useful user using usual usually valid van very vienna view vintage vise visitors wait waiting waits wall want wanted wants warm was waste wasted way we we'd we've webhook wed wedding wednesday wednesdays wee week weekdays weekly weeks weigh weighed weighing weighs weight well went were what what've whatever wheel when whenever where whereabouts whether which while who whoever whole whom whose why wide width will window winter wire wires wise wish with withdraw withdrawn within without woman wood work working works workshop worn worth would wren write written wrong wrote x y'all ye year yesterday yet you you're zone 
)~"
R"~($common	a about across add after afternoon again ago ai all along already also altogether alway am an and another any anybody anymor anyon anyth are around arriv as ask assign at away back bar be becaus been befor behind being belong bend bent between bin bit board book both box broken but buy by call came can cancel chang check christma clos cm coil com come corner could count crown customer cut date day december deep deliver delivery did do doe doing done door down drawer dress drop due each edge else end enough enter even ever every everyth exist fair far ferro fil find fine finish fix flat for forget fortnight found free fret friday from full get give glue go goe going gone gonna good got grab groov groove had half hand happen hard has have he held her here hereby high him his hold home hour how i i'd i've if in inch includ instead into is it item its job just keep kept kindly know laid last late lead least leav left length let level levell lie lift like limit lindwurm line list littl long longer look loos lot low m machin machine made make man many mark mate material may me mean meant measur measure metre middl mil millimetr millimetre mind minute mm monday month more morn most mov move much must my nam name neck need never new next nip no nobody noon not note noth november now number nut o'clock of off old on once one only open or order other our out over own pass past peopl person phon piec piece plac plan pleas point polish position press promis provid pull push put quarter queu rack radius ran read ready receiv recheck reckon record register remain remov report reserv rest right rod round run said same sand saturday saw say scal scrap seat see send sent set shall she shop short should show side sinc sit slot so some somebody someth spring staff stag stand start stay stick still stock straight strik stuff supplier supply suppos tabl take tang tell than that the their them then ther thes they they'r thing think this thos threw through thursday till time tin to today together told tomorrow too took top touch tru tuesday turn under until up us use used using wait want was wast way we we'v wednesday wee week well went were what when wher which whil who whol whom why wide width will window wire with without work workshop would wrong y'all ye year yesterday yet you 
fit==	0:24 1:13 5:13 18:15 34:20 81:8
slot==	0:151 1:93 2:-55 3:129 4:85 5:-18 6:-13 8:-8 11:-12 13:-41 15:-13 16:-30 17:-15 22:-11 23:-20 24:-23 25:-8 26:-11 27:-16 29:-16 30:-9 33:52 34:-8 35:149 36:72 37:-18 38:-17 39:-19 40:70 41:65 42:-28 43:-20 44:-31 45:33 46:-14 47:-9 48:-9 49:-10 63:-24 64:-11 69:-62 70:-38 71:17 72:-11 73:63 75:70 76:72 77:87 80:-8 81:-48 82:-10 83:-11 84:-21 86:-18 87:-9 88:-26 89:-19 90:79 91:-16 92:57 94:-32 95:-14 96:-48 100:-12 102:16 103:-9 104:-13 105:47 106:-17 107:-16 109:-12 112:-13 113:-11 114:-13 116:-8 122:-8
length==	0:21 1:35 2:-35 3:34 4:80 7:13 22:33 35:-16 39:-9 40:62 41:15 45:-55 48:-21 49:-17 55:-25 63:-10 67:28 69:-9 70:-31 71:11 74:-25 75:-33 77:70 79:-28 80:84 81:48 84:29 90:-18 91:-36 92:-28 96:-10 97:-16 113:-22 119:22 120:8 123:8
job==	0:46 2:33 3:18 4:-30 5:67 6:-33 7:-15 8:-16 9:-23 10:-15 11:12 12:-61 13:86 14:-26 15:41 16:44 17:83 18:29 19:-13 20:-18 21:-19 22:-20 23:65 24:24 25:-21 26:-17 27:-24 28:-22 29:22 30:67 31:-17 32:-20 33:39 34:-12 35:-15 36:47 37:-51 38:-40 39:-35 40:10 42:54 43:17 44:55 45:81 46:-36 47:53 48:-10 49:-27 50:-17 51:-23 52:-18 53:-32 54:-23 55:-8 56:-15 57:-26 58:-15 59:-16 60:-21 61:-17 62:-21 63:24 64:104 65:-18 66:-12 67:-14 68:-23 69:-47 70:25 71:27 72:9 73:34 74:-16 75:-16 77:-19 78:-21 79:-30 80:-45 81:-38 82:54 83:22 84:-54 85:-17 87:-18 88:62 89:19 90:32 91:43 92:23 93:37 94:64 95:29 96:16 97:-27 98:-33 99:-14 100:-31 101:-27 102:21 104:-10 105:-16 106:30 107:51 108:-22 109:-21 110:-31 111:-20 113:44 114:20 115:-16 116:-26 117:-21 118:-15 119:-20 120:-21 121:-11 122:-16 123:179
pull==ed	0:62 2:-10 3:-10 4:-10 33:25 38:11 40:-10 42:44 47:9 69:-13 71:155 74:-22 76:-8 77:-10 78:22 81:-10 90:-11 91:-10 94:41 112:-8 113:-8 123:33
long==	0:39 1:21 2:-13 3:53 4:82 5:-13 6:-9 8:-14 9:29 11:40 13:-28 16:-25 17:-22 18:-8 23:-9 24:-8 25:-10 27:94 29:-13 30:-16 32:67 34:-17 35:-11 37:-9 39:-17 40:20 41:-13 49:23 54:-8 56:16 64:-8 65:8 67:20 68:24 74:-8 76:-15 84:48 85:53 88:-18 90:-11 91:-8 92:-12 93:8 96:-8 97:-8 103:27 123:13
fit	0:103 4:-13 5:12 18:15 33:-9 34:19 69:-8 81:8 90:-9
^ fit	0:30
slot	0:81 1:59 2:41 3:31 4:190 5:-41 6:-26 7:-10 8:-15 9:-15 10:-9 11:-23 12:-14 13:29 14:-11 15:-26 17:-34 18:88 19:-9 20:-13 21:-10 22:-17 23:-30 24:-36 25:-12 26:-17 27:-13 28:-12 29:-28 30:-18 31:-9 32:-11 33:35 34:-14 35:77 36:58 37:-28 38:-24 39:-26 40:32 41:33 42:31 43:15 45:32 46:-29 47:-27 48:-12 49:-16 50:-9 51:-9 52:-11 53:-12 54:-12 56:-8 59:-8 61:-8 62:-8 63:-50 64:-25 65:-11 67:-10 68:-12 69:66 70:73 71:-18 72:-27 73:158 74:49 75:62 76:72 77:47 78:-11 79:-22 80:-32 81:19 82:-19 83:-19 84:-23 86:-31 87:-23 88:-38 90:99 91:-27 92:23 93:-15 94:16 95:18 96:33 98:-15 99:-8 100:-17 101:-11 102:36 103:14 104:-25 105:39 107:16 109:-16 110:-12 111:-8 112:-31 113:-40 115:-9 116:-14 117:-9 120:-10 122:-11 123:-29
fit slot	0:23
the	0:-27 2:29 3:-28 4:12 6:57 7:51 9:20 12:21 13:-38 15:-19 17:48 18:13 20:15 21:24 22:-11 24:17 25:-12 26:9 27:23 30:12 31:26 32:15 33:42 34:17 35:13 37:39 38:10 39:36 40:11 41:22 43:30 44:42 45:-17 46:29 47:34 48:-51 51:-20 52:14 53:18 54:14 55:-8 56:36 57:-17 59:19 61:-21 62:13 63:13 66:56 67:-11 68:28 69:31 70:41 71:38 72:15 73:29 75:17 76:15 77:9 78:34 79:25 80:38 82:29 83:36 85:34 86:17 87:26 88:16 89:57 90:23 92:34 93:-18 94:10 95:-9 96:34 97:17 99:50 101:12 102:63 103:25 104:12 105:17 106:13 107:10 108:-26 109:-13 111:20 113:16 114:21 116:33 117:46 118:34 120:12 121:26 122:-21 123:-12
slot the	2:14 3:-12 4:9 36:24 40:18 42:-13 44:-8 69:12 70:28 71:-8 77:14 81:8 90:-11 92:21 114:8
#o	0:73 1:-22 2:-13 3:56 5:-26 6:-26 7:-9 8:-16 9:-14 10:-10 11:21 12:23 13:-53 14:-19 15:-21 16:-19 17:-36 18:-19 19:-11 20:30 21:18 22:-10 23:-19 24:-20 25:-22 26:22 27:-36 28:18 29:46 30:34 31:-16 32:-18 33:27 34:-17 35:59 36:14 37:-15 38:-12 39:-16 41:25 42:-45 44:112 46:35 47:-23 49:-12 51:-17 52:62 53:48 54:-15 56:-11 57:-11 59:-8 60:-14 61:-12 62:-12 63:-17 65:-9 66:-9 68:-9 69:25 70:20 71:-29 72:-13 73:-20 74:11 75:40 76:41 77:57 78:-8 79:-8 80:-15 81:-11 82:-16 83:-15 86:-30 87:-8 88:34 90:16 91:30 92:22 93:-13 94:39 96:21 97:-9 98:10 99:-18 100:-11 101:10 102:-16 103:-10 106:-31 107:-32 108:-11 109:55 110:56 111:67 112:-22 114:32 115:8 116:-8 117:52 118:-16 119:-8 120:-10 121:-10 122:-10 123:-39
the #o	0:44 1:-20 3:45 5:-21 6:-22 8:-12 9:-10 11:17 12:-18 13:-23 14:-16 15:-14 16:-29 17:-20 18:-14 19:-8 20:25 21:20 23:-11 24:-12 25:-13 26:11 27:-27 28:30 29:-10 30:41 31:-9 32:-11 33:21 34:-11 35:17 36:27 37:-10 39:-10 41:15 42:-38 43:-10 44:37 45:13 46:60 47:-15 51:-11 53:42 54:-10 56:-8 60:-9 62:-9 63:-13 69:28 70:22 71:-27 72:-9 73:-14 74:14 75:25 76:49 77:36 80:-11 81:-8 82:-10 83:-10 86:-26 88:46 90:21 91:13 92:29 93:-10 94:51 96:24 98:-9 99:-12 101:13 102:-14 106:-27 107:-25 108:-8 109:57 110:49 111:30 112:-16 113:-15 114:21 116:-8 117:30 118:-13 120:-8 123:-25
length	0:9 1:32 3:23 4:193 7:11 8:11 17:-8 21:-8 22:15 33:-10 35:-17 36:-8 38:-15 39:-10 40:61 42:-16 44:-13 45:-55 48:-21 49:-19 54:26 55:-25 63:-11 67:27 69:-10 70:-34 71:26 74:-17 75:-33 77:60 78:18 79:72 80:42 81:38 84:28 87:-45 88:-10 90:-19 91:-37 92:-44 96:-18 97:-17 113:-23 119:32
#o length	0:8 41:8
#d	0:67 1:147 2:24 3:155 4:-61 5:-22 6:-31 8:-78 9:-70 10:-14 11:-36 12:-21 13:-50 14:-35 15:-31 17:-60 19:-50 20:-57 21:-37 22:-74 23:27 24:-36 25:-34 26:-33 27:-26 28:-30 29:-38 30:-28 31:-37 32:-41 33:9 34:-29 35:87 36:78 37:149 38:165 39:112 40:179 41:132 42:-42 43:-27 44:-48 45:17 46:-16 47:-24 48:78 49:48 50:36 51:-13 52:9 53:-15 55:-25 56:-19 57:-22 58:-12 59:-19 60:-14 61:-15 62:-14 63:-32 64:-29 65:68 66:-16 67:116 68:128 69:103 70:-82 71:40 72:-20 73:159 74:-43 75:122 76:-61 77:83 78:-75 79:177 80:128 81:143 82:-26 83:-24 85:-18 87:115 88:-61 89:-29 90:-77 91:166 92:-67 93:-20 94:-53 95:-39 96:-49 97:-41 98:-21 99:-23 100:-19 101:-18 102:-26 103:-19 104:-19 105:-19 106:-28 107:-32 108:-9 109:-20 110:-14 111:-20 112:-29 113:-38 114:-19 115:11 117:-26 118:-21 120:-32 121:-17 122:-20 123:-33
)~"
R"~(length #d	0:40 1:29 3:27 35:-11 38:11 41:10 44:-8 45:-38 48:-23 55:-22 63:-10 67:19 70:-21 71:11 75:-24 77:70 79:42 80:15 81:39 87:-31 90:-12 91:-29 92:-25 96:-8 97:-12 113:-16 119:24
#d slot	0:11 40:9 73:10
#o slot	0:37 2:13 4:-20 40:8 41:-9 75:19 92:8
#n	0:47 1:66 2:19 3:77 4:47 5:-46 7:-22 8:-136 9:-135 10:-10 11:-50 12:-96 13:-29 14:-78 15:-12 16:33 17:16 18:-16 19:-94 20:-41 21:-46 22:-34 23:-12 24:-31 25:-117 26:-73 27:-18 28:-68 29:-54 30:15 31:-86 32:-61 33:26 34:-76 35:138 36:63 37:95 38:66 39:82 40:75 41:109 42:21 43:70 44:103 45:12 46:41 48:-54 49:105 50:47 51:44 52:-26 53:61 54:-22 55:-44 56:-65 57:-66 60:-91 61:-56 62:-69 63:24 64:8 65:35 66:9 67:41 68:41 69:105 70:79 71:48 72:106 73:13 74:123 75:59 76:66 77:77 78:59 79:43 80:87 81:146 83:-11 84:34 85:-71 86:-16 88:115 89:68 90:24 91:111 92:99 93:-30 94:76 95:81 96:122 97:47 98:89 99:-88 100:46 101:29 102:-88 103:88 104:68 107:-51 109:-60 110:62 111:-38 112:43 113:71 114:64 115:63 116:58 117:9 118:-26 119:27 120:58 121:-69 122:-53 123:32
slot #n	0:111 1:-68 3:46 4:-26 5:-18 6:-8 13:-34 16:18 17:-14 18:-20 23:-10 27:-15 33:31 35:29 36:38 37:-15 38:-11 39:-12 40:28 41:38 42:-27 44:36 45:37 46:-9 47:-9 49:-8 63:-22 64:-9 69:10 70:19 71:23 72:-14 73:-23 74:65 75:89 76:30 77:33 79:-13 80:-20 81:22 84:-15 86:-14 88:-15 90:17 91:-20 92:26 95:18 96:26 104:-12 106:-16 107:-9 112:-11 113:-14 123:21
job	0:-19 1:-12 2:65 3:-13 4:41 5:57 6:81 7:-23 8:-41 9:34 10:-25 11:91 12:182 13:73 14:10 15:90 16:31 17:30 18:71 19:-26 20:-31 21:-29 22:-39 23:38 24:65 25:-41 26:-37 27:74 28:-42 29:46 30:37 31:-28 32:-34 33:33 34:-31 35:-43 36:27 37:-77 38:-46 39:-47 41:8 42:45 43:40 44:19 45:75 46:69 47:101 48:-13 49:-36 50:-25 51:-32 52:-26 53:-41 54:-34 55:-12 56:-21 57:-35 58:-25 59:-26 60:-37 61:-30 62:-31 63:75 64:85 65:-25 66:-16 67:-22 68:-31 69:-18 70:17 71:45 72:34 73:35 74:-34 75:31 76:36 77:22 78:-27 79:-35 80:-58 81:-49 82:69 83:81 84:-73 85:-23 86:73 87:-24 89:66 90:73 91:29 92:33 93:74 94:55 95:40 96:23 97:-33 98:-50 99:-22 100:-45 101:-37 102:8 103:-15 105:-27 106:85 107:66 108:-30 109:-32 110:-47 111:-30 112:69 113:80 114:47 115:-22 116:-36 117:-31 118:-26 119:-26 120:-30 121:-17 122:-23 123:-22
#n job	0:27 3:-18 4:39 11:11 13:-13 23:24 24:11 27:25 33:14 36:-11 40:13 41:-10 42:-16 47:-25 63:-15 64:-18 73:-12 74:28 76:18 77:23 81:-10 88:10 90:-37 92:9 94:-14 96:11 106:-11 107:14 113:-39
job job	1:-10 11:32 13:15 15:-15 23:35 24:22 27:26 33:17 35:-22 36:-14 44:-38 46:-19 47:-34 63:-15 64:-28 70:-12 74:9 75:38 76:28 77:10 81:-10 84:-16 89:22 90:25 91:26 93:22 95:17 106:-24 107:11 112:-14 113:-43 114:-12 123:-10
job #n	1:-22 2:71 3:-17 4:19 5:51 6:83 7:-18 8:-22 9:-33 10:-19 12:-60 13:99 14:-31 15:86 16:56 17:62 18:87 19:-15 20:-24 21:-22 22:-33 24:38 25:-25 26:-28 27:43 28:-30 29:24 30:-24 31:-20 32:-23 33:23 34:-33 35:-10 36:-12 37:-68 38:-33 39:-41 40:10 42:99 43:34 44:40 45:-37 46:122 47:100 48:-11 49:-29 50:-22 51:-29 52:-21 53:-36 54:-28 55:-9 56:-16 57:-16 58:-21 59:-23 60:-21 61:-22 62:-24 63:114 64:98 65:-20 66:-14 67:-18 68:-27 71:31 72:27 73:65 75:45 76:17 77:18 78:-23 79:-28 80:-52 81:-16 82:68 83:74 84:-30 85:-20 86:95 87:-18 88:10 89:15 92:24 93:42 94:-17 95:20 96:-16 97:-25 98:-44 99:-16 100:-41 101:-32 102:-23 103:-46 104:11 105:-17 106:124 107:41 108:-27 109:-26 110:-43 111:-21 112:110 113:195 114:66 115:-19 116:-33 117:-27 118:-20 119:-22 120:-26 121:-14 122:-17 123:31
#n slot	0:16 1:-11 2:18 3:15 4:-32 16:18 33:8 40:27 43:10 44:-10 63:-11 70:38 71:-33 73:26 74:-37 75:40 76:-9 77:-39 81:10 88:-11 89:11 90:-19 92:40 95:11 96:-13 106:-8
slot slot	3:-9 4:-16 16:8 33:16 36:14 40:35 41:-15 63:-9 69:8 70:25 74:-12 75:11 76:13 95:10
#n length	1:9 3:19 22:35 40:23 41:12 68:-12 71:15 74:-11 75:-15 81:23 84:-29 91:-10 92:-11 113:-9 123:14
length #n	1:11 2:17 3:26 40:14 42:-8 45:-12 49:-10 77:-9 79:15 80:8 81:16 87:-9 92:-16
mm	0:33 1:35 3:76 4:-37 6:-15 7:30 9:-19 11:-10 13:-14 15:-10 16:52 17:-26 18:10 19:-15 20:-22 21:-11 22:-24 23:-14 24:8 27:-10 29:-14 30:-10 31:-12 32:-11 33:-18 34:-8 35:-40 36:-17 37:10 38:70 39:-34 40:53 41:72 42:-22 43:-23 44:-28 45:87 46:-11 47:-8 48:80 50:37 53:-9 54:83 55:-25 57:-10 59:-9 63:-13 64:-11 65:33 66:-20 67:73 68:53 69:-23 70:-37 72:-9 73:39 74:-30 75:31 76:-28 77:24 78:-32 79:41 80:61 81:65 84:53 85:-13 86:57 87:72 88:-30 89:-13 90:-33 91:75 92:-46 93:-8 94:-16 95:-14 96:-28 97:-24 98:-12 100:-8 103:-10 104:-8 106:-10 107:-9 112:-11 113:-16 114:-11 116:8 117:-12 118:-8 119:-30 120:9 123:-39
#n mm	0:21 1:44 2:15 3:22 4:-22 7:41 8:-11 16:37 17:-14 22:-14 24:-9 33:-8 35:-17 36:-8 37:22 38:60 39:-17 40:21 41:37 42:-14 43:-12 44:-12 45:34 49:-19 50:-9 54:57 55:-14 65:18 67:21 69:-12 70:-20 73:35 74:-20 76:-11 77:14 78:-15 79:12 80:38 81:33 84:34 86:16 87:54 88:-15 90:-19 91:44 92:-24 94:-8 96:-14 97:-16 113:-10 116:-9 123:-20
mm length	1:17 3:17 40:-18 45:-16 67:17 79:11 80:15 81:20 84:-9
mm job	2:9 3:31 40:12 41:20 44:-9 70:-8 71:17 84:-13 92:-15 96:-13
in	0:34 2:-17 3:19 4:-43 5:-10 6:-23 7:42 9:-13 10:23 11:-22 12:8 13:-21 14:22 15:-22 16:-16 17:-45 18:72 19:-11 20:39 21:44 22:21 25:16 26:9 28:48 29:-15 30:-18 31:-36 33:-16 34:18 35:43 36:-31 37:-26 38:56 39:-11 40:35 41:16 42:-8 43:-26 44:-38 45:48 46:23 47:-9 48:26 49:15 51:-24 52:9 53:21 54:41 56:-10 58:19 59:-13 62:13 63:-30 64:-10 65:31 66:-12 67:12 69:-43 70:-34 71:29 72:-15 74:57 76:-21 77:25 78:41 80:45 81:46 82:8 86:18 88:-31 89:-15 90:39 91:19 92:-36 93:20 95:28 96:-30 98:-32 99:-28 100:-14 102:-15 103:9 104:-8 105:-16 106:-31 107:-8 108:23 109:44 110:49 111:-28 113:-30 114:19 116:17 117:-15 118:-23 119:36 120:-18 122:9 123:-40
#d in	0:21 1:8 7:10 8:-14 9:-8 20:-8 22:-13 23:-9 24:-8 35:-11 36:-8 38:21 39:-26 40:32 41:29 45:35 48:9 50:25 55:-13 63:-9 67:28 68:12 69:-8 70:-9 73:10 77:23 79:29 80:51 81:11 86:13 87:22 90:-16 91:48 92:-12 97:-19 113:-8 119:38 120:-23 123:15
in slot	0:-10 1:-18 3:42 4:-14 16:-9 35:11 40:26 41:-15 69:-13 74:34 75:-12 77:-12 81:14 90:36 123:58
#r	0:9 1:-25 2:21 4:16 5:-15 6:-14 8:-14 9:-16 10:-9 11:-8 12:-14 13:-50 14:-13 15:-16 16:22 17:-13 18:-27 19:-10 20:37 22:-13 23:-18 24:-17 25:-17 27:-28 28:-22 30:14 31:-14 32:-11 33:16 34:-16 35:25 36:-10 37:-9 38:-8 39:-12 41:25 42:-44 43:-10 44:19 46:40 47:-23 49:-13 51:47 52:17 53:101 54:-16 56:-9 57:-8 60:-18 61:-17 62:-16 63:-20 64:-26 69:22 70:64 71:-21 72:-11 73:-19 74:121 76:19 77:13 78:-8 79:-14 81:37 82:-10 83:-12 86:-26 88:121 89:15 90:21 92:14 93:-10 94:51 95:34 96:31 97:-8 98:-13 99:-10 101:-10 102:-10 104:109 105:10 106:-34 107:-34 108:31 109:26 110:77 111:19 112:-21 113:-22 114:-15 116:-15 117:55 118:-15 120:-9 122:-8 123:-30
slot #r	0:17 1:-11 2:14 3:12 4:-21 13:-12 18:-11 33:20 35:42 41:13 42:-17 43:9 44:-10 69:42 70:15 73:-10 74:15 77:25 88:-10 90:-25 94:24 96:24
#r slot	0:12 3:10 16:9
#r job	2:12 3:-11 4:-10 16:-13 42:-9 43:9 94:8 104:43
@job	1:-24 2:98 3:28 4:89 5:13 6:100 7:-47 8:-78 9:-88 10:-46 11:-9 12:-63 13:150 14:-73 15:159 16:103 17:60 18:101 19:-50 20:-60 21:-52 22:-57 24:18 25:-89 26:-35 27:41 28:-86 29:-36 30:-36 31:-67 32:-63 33:16 34:-86 35:29 36:62 37:-42 38:-50 39:-62 40:44 41:36 42:113 43:64 44:90 45:39 46:155 47:162 48:-28 49:-37 50:-32 51:-33 52:-43 53:-36 54:-62 55:-19 56:-47 57:-43 58:-31 59:-40 60:-49 61:-39 62:-45 63:154 64:111 65:-30 66:-32 67:-25 68:-42 69:19 70:35 71:43 72:97 73:64 74:-23 75:34 76:33 77:43 78:-35 79:-40 80:-57 81:15 82:83 83:69 84:-40 85:-36 86:126 87:-45 88:52 89:65 90:67 91:54 92:65 93:90 94:64 95:54 96:58 97:-38 98:-52 99:-63 100:-61 101:-51 102:-66 103:-44 105:-24 106:115 107:37 108:-27 109:-58 110:-48 111:-56 112:160 113:232 114:73 115:-22 116:-46 117:-52 118:-49 119:-30 120:-38 121:-34 122:-45 123:13
job @job	1:-10 2:-17 3:-15 4:16 11:9 13:-48 15:-12 27:14 33:15 36:43 40:16 41:-10 43:10 44:17 47:-10 69:-19 70:8 71:-9 73:-19 74:-12 75:-19 77:23 81:-16 89:21 90:33 91:13 92:21 93:12 94:25 96:-10 107:21 112:-8 113:-24 123:-8
@job length	3:16 40:12 41:-19 44:-8 71:22 74:11 75:-9 77:24 92:-15
#d mm	0:20 2:-11 3:70 4:-12 8:13 9:-8 16:22 17:-10 18:21 20:-9 22:-8 23:-8 33:-8 35:-21 36:-8 37:-11 39:-15 40:28 41:26 44:-14 45:27 48:55 49:29 50:9 54:36 55:-11 68:17 69:-10 70:-16 71:10 74:-8 75:39 76:-15 77:12 78:-10 79:25 80:27 81:35 87:29 88:-11 90:-12 91:42 92:-20 96:-13 116:15 119:-21 120:14 123:-19
)~"
R"~(fret	0:75 1:-47 2:104 4:14 5:26 6:-21 7:-12 8:-13 9:-36 10:-14 11:-35 12:13 13:20 14:-14 15:-16 16:41 17:80 18:-30 19:-14 20:-24 21:-16 22:-29 23:-33 24:39 25:-26 26:-21 28:-16 29:-48 30:40 31:-13 32:-24 33:48 34:-25 35:25 37:-21 38:-24 40:67 41:50 42:55 43:9 44:72 45:47 46:-31 47:-23 49:-22 50:10 51:-13 52:-13 53:-15 54:-15 56:-10 57:-9 59:-10 60:-9 61:-8 62:-11 63:-24 64:-29 65:-17 66:-9 68:-21 69:11 71:61 72:33 73:-22 74:88 75:-11 76:104 77:55 78:23 79:-28 80:-25 82:-12 83:-24 84:-9 85:-9 86:-38 87:-21 88:13 89:31 90:32 91:38 92:128 93:-18 94:79 95:66 96:51 97:-19 98:-21 99:-9 100:-16 101:-14 102:23 103:30 104:-24 105:-14 106:20 109:-15 110:-17 111:-12 112:-32 113:-36 114:-20 115:-11 116:-17 117:-12 118:-8 119:-14 120:-12 121:-8 122:-10 123:-10
slot fret	0:18 1:-12 4:-12 36:15 40:-14 43:18 69:13 70:9 75:11 76:12 77:-9 91:10 92:12
fret #n	1:-25 2:-12 4:-8 13:-29 15:-8 16:40 17:47 24:-21 27:-14 30:-9 33:18 35:48 37:-9 39:-12 40:34 41:28 42:-32 43:14 44:20 47:-8 63:-9 64:-11 69:49 70:18 71:-9 72:-19 74:26 75:14 76:53 80:-13 84:-14 86:-14 87:-13 88:41 89:31 90:55 91:49 94:62 95:30 96:33 103:-8 104:-8 106:-19 107:-9 112:-10 113:-15 123:-8
@job slot	0:21 1:-9 2:12 4:24 13:-27 18:-9 33:-8 35:24 40:-10 41:40 42:-18 43:18 63:-9 71:-9 73:27 74:-31 75:-18 90:-8 92:16 94:10 96:33 106:16 107:18 113:-12 114:9
pull	0:66 2:-20 4:-15 13:-16 15:-9 16:-12 17:-14 27:8 29:-9 30:-8 32:-8 33:17 35:-8 38:10 40:-11 42:99 43:-10 44:-14 46:-8 56:16 63:-9 69:-14 71:166 74:-24 76:22 77:-12 78:21 81:-10 88:-10 90:-13 91:-12 92:-8 94:36 95:-9 96:-11 102:50 103:12 106:93 107:33 112:-12 113:-12 123:10
~	0:-10 1:-13 2:29 3:24 4:-18 6:-8 7:-9 8:-16 9:-23 10:-15 11:-44 12:16 13:-17 15:-11 16:42 17:-14 18:-18 19:-14 20:-14 21:-12 22:-15 23:-14 25:-26 26:-17 27:-33 29:-16 30:-10 31:-17 32:91 33:-11 34:22 35:-14 36:-8 37:-15 39:17 40:-32 41:-14 42:-19 43:-14 44:-9 45:-31 46:-11 47:15 48:100 49:25 50:-13 51:-12 52:21 54:137 55:142 56:56 57:107 58:-10 59:-14 60:48 61:-25 62:-17 63:17 64:-13 65:-14 66:-9 67:-10 68:22 69:-11 70:-20 72:-8 73:-21 74:-33 75:-12 76:48 77:-27 79:-9 80:9 81:-21 82:-9 84:44 85:54 87:-12 88:-11 90:-17 91:-27 92:-33 93:-8 94:-14 95:-8 96:-8 97:49 98:42 99:-29 100:29 101:-15 102:-22 103:-12 104:-15 105:-16 106:-13 107:-23 108:-15 109:25 110:-31 111:-25 112:-13 114:-10 115:34 116:71 117:52 118:22 119:24 120:156 121:52 122:-9 123:-54
~ slot	40:-10 43:11 70:-8 76:16
and	0:9 1:-36 2:20 3:-11 5:-22 6:-27 7:-15 8:16 10:42 11:20 13:17 14:39 15:-22 16:14 17:18 19:8 20:37 21:49 22:-32 23:55 24:-19 25:11 26:-18 27:35 28:-21 29:12 32:8 33:-20 34:14 35:-15 36:-19 37:-39 38:-8 41:27 43:-14 44:28 45:-8 47:-12 49:-22 50:-14 51:8 53:-24 58:18 59:-14 60:15 61:27 63:-31 64:-26 65:29 66:16 67:-10 68:-13 69:33 71:16 72:-25 73:-12 74:24 76:24 77:19 78:-12 80:25 82:29 83:-17 84:19 85:-21 86:-13 87:21 89:42 90:14 91:17 92:9 94:89 95:62 96:10 97:-27 98:-18 99:-22 100:-14 102:-20 103:-12 105:-16 106:-18 107:-14 108:19 109:-15 110:-20 111:-22 112:-24 115:49 116:9 117:-13 118:-16 119:12 120:-14 123:-75
#n and	0:-9 1:-25 4:9 5:-10 10:-9 11:-8 13:26 17:-12 18:-8 23:-9 24:-8 27:-11 29:-11 33:32 35:-56 36:-15 37:-13 39:-8 41:11 42:9 43:8 44:10 49:-9 53:14 63:-13 64:-9 69:24 70:24 72:-9 76:18 77:26 78:-10 79:17 80:45 81:55 88:14 89:18 90:55 91:-12 92:29 94:26 95:20 96:38 110:8 111:-9 113:-8 123:-13
and #n	0:-18 1:-13 3:13 5:-9 11:54 13:-13 17:-12 20:-8 23:-16 24:-9 27:-13 29:-11 30:-8 35:-9 36:-15 37:-14 38:-19 39:-23 41:9 42:22 44:19 45:18 46:-8 49:-19 51:-14 63:-12 64:-8 65:42 68:-8 69:39 70:22 72:-10 74:47 76:24 77:25 79:18 80:34 81:25 84:44 86:-9 90:30 91:43 92:-9 96:29 97:-9 98:-8 104:-11 112:-8 115:38 116:-10 123:-10
#o job	3:21 11:9 41:-9 92:17 96:-8
long	0:39 1:21 2:-13 3:53 4:82 5:-13 6:-9 8:-14 9:29 11:40 13:-28 16:-25 17:-22 18:-8 23:-9 24:-8 25:-10 27:94 29:-13 30:-16 32:67 34:-17 35:-11 37:-9 39:-17 40:20 41:-13 49:23 54:-8 56:16 64:-8 65:8 67:20 68:24 74:-8 76:-15 84:48 85:53 88:-18 90:-11 91:-8 92:-12 93:8 96:-8 97:-8 103:27 123:13
slot _ #o	2:14 3:-12 4:9 36:24 40:18 42:-14 44:-8 69:12 70:28 71:-8 77:14 81:8 90:-11 92:21 114:8
the _ length	0:8 2:18 3:16 4:20 40:15 41:-10 42:-9 49:-10 68:20 71:19 75:-9 77:-11 79:13 80:-9 87:-16 92:-10
#o _ #d	0:8 3:15 41:10
length _ slot	4:63 77:10
#d _ the	0:8 3:-24 36:23 38:14 40:41 65:27 75:11 77:11 80:16 91:10
the _ slot	0:27 1:-10 2:48 3:24 13:-19 24:-9 33:11 35:16 40:-30 41:11 42:-18 63:-8 73:16 74:-31 75:-16 76:-8 89:9 96:20 106:17 107:20 113:-11
#o _ #n	3:-10 74:-11 92:8 101:12
slot _ job	0:74 1:-9 3:26 4:18 13:-19 17:-10 18:14 33:9 35:20 36:-8 40:25 41:-29 42:21 44:13 63:-11 71:-17 73:19 74:-30 75:14 90:-18 92:-20 106:12 107:-11 113:-8 123:-10
#n _ job	0:24 1:-21 2:21 3:35 5:-17 13:-11 15:-15 16:12 17:-14 18:-11 24:-10 27:-13 29:-10 33:29 35:37 36:11 37:-10 38:-12 39:-9 40:67 41:39 42:-43 43:30 44:-63 45:-17 46:-18 47:-19 63:-13 64:-40 69:23 70:11 71:52 73:-12 74:79 76:37 77:61 80:-18 81:-12 82:-8 83:-16 84:-11 86:-12 88:39 89:23 90:49 91:16 92:-9 94:20 95:27 96:24 103:20 104:-17 106:-32 107:-19 112:-19 113:-41 123:47
job _ #n	1:-14 6:16 11:30 15:-15 23:28 24:22 27:20 33:14 35:-25 40:17 42:-10 44:-44 46:-21 47:-29 63:-17 64:-30 70:-19 73:-9 75:35 76:25 81:-12 84:-16 88:14 89:22 90:54 91:30 92:-9 93:21 95:17 96:15 103:26 106:-25 107:33 112:-17 113:-46 123:-16
job _ slot	2:13 3:10 13:-12 33:-9 35:11 40:25 41:14 43:18 44:-11 69:-8 70:24 71:-32 73:25 74:-32 75:15 76:-8 81:8 88:-8 90:-14 92:47 94:8 96:10
#n _ slot	0:-41 1:-21 4:-18 18:11 33:24 35:40 36:36 40:25 41:17 44:23 70:18 71:-16 73:19 75:24 76:-13 77:-20 81:-15 90:43 92:-16 95:8 96:-18
slot _ #n	1:34 3:-9 4:11 13:-16 33:17 36:28 40:21 41:-9 42:-10 43:18 63:-13 69:21 70:31 71:-10 74:-17 75:15 76:24 90:-9 91:9 95:8 106:-8 113:-9 123:-8
slot _ length	0:8 41:25
#n _ #n	1:-37 2:30 3:29 4:32 5:-23 6:-9 10:-8 11:-9 13:-46 15:-13 16:44 18:-16 22:-12 23:-15 24:-18 26:-8 27:-19 28:-24 29:-14 30:-21 33:-23 35:-33 36:-21 37:-28 39:-32 40:28 42:-16 43:38 44:32 45:12 46:13 47:-17 49:-12 50:-9 51:69 53:62 54:-12 59:-10 60:-8 63:-35 64:-22 65:-9 69:78 70:51 71:12 72:-27 73:-12 74:58 75:9 76:30 77:-15 78:-13 79:39 80:77 81:46 82:13 83:-8 84:12 86:-11 88:58 90:23 91:29 92:-41 93:-8 94:42 95:15 96:73 97:-22 98:-33 101:-10 103:-17 104:46 106:-26 107:-13 108:28 109:-13 110:46 111:-10 115:-12 116:-15 120:-16 123:-30
length _ mm	1:22 2:18 3:72 38:9 42:-8 44:-8 45:-28 48:-8 49:-10 55:-9 67:12 70:-11 75:-19 79:24 80:9 81:42 87:-21 91:-14 92:-24 96:-10 113:-9 119:8
#n _ length	1:10 3:-12 40:-8 41:11 77:17 81:8 84:-9
mm _ #n	45:24 79:11 81:11 84:-18 87:8 119:-23 120:24
mm _ job	3:37 40:15 41:-14 71:8 74:-12 77:-13 81:17 84:-8 92:-9 96:-8
job _ length	2:-9 3:26 40:23 41:-11 44:-8 71:16 75:-9 77:37 84:-8 91:-13 92:-16
mm _ #d	1:11 40:-18 45:12 55:-10 67:24 73:-8 80:14 84:14 86:11 91:-10 119:-11 120:10
length _ in	0:10 40:15 45:-9 55:-9 77:22 79:13 80:15 81:-8 84:15 87:-9 91:-11 97:-12 119:17
#d _ slot	0:-26 3:16 35:25 36:34 40:9 41:-10 69:11 75:-14 77:8 123:25
in _ #r	35:21 110:15
slot _ slot	0:27 3:-9 4:-11 16:12 35:-9 74:-18 75:13 77:-18 92:19
#r _ #n	16:-8 44:9 74:-21 88:9 104:47 110:9
#n _ #d	0:-13 1:-16 2:11 3:31 17:-9 35:-15 38:-26 39:-12 40:72 41:29 42:-8 43:-9 44:-9 63:-9 68:67 69:10 75:89 76:-9 77:19 78:-12 79:39 84:-21 87:-8 88:-13 89:-8 90:-11 91:71 92:-11 96:-10 113:-8 119:11 120:-13 123:-19
#o _ #r	40:8 110:13
#r _ @job	0:9 3:11 40:18 44:-9 69:13 74:25 88:13 94:14
@job _ #d	0:-8 2:-10 17:-8 35:-17 40:93 44:-11 69:16 71:18 73:48 75:43 76:-12 77:12 81:-8 88:-8 90:-12 92:-14
#d _ job	1:8 3:-27 18:9 36:-11 40:13 41:32 44:-9 69:16 71:13 73:11 77:23 84:-10 88:-9 91:14 92:-20 96:-9 123:28
#n _ fret	2:9 4:-9 16:-11 17:-8 35:54 38:10 40:-30 41:-18 42:-12 44:32 71:12 72:21 75:14 89:12 91:16 96:-17
fret _ slot	2:-11 3:-14 4:-18 33:12 36:13 40:57 41:-10 70:-8 71:-9 74:18 76:41 77:23 90:-14
job _ job	2:-35 3:-12 4:10 11:17 13:-22 16:8 18:15 23:23 24:13 27:22 33:13 35:-15 36:-11 40:-21 41:12 42:8 44:-9 47:-26 73:-16 74:20 76:21 81:-15 88:-13 90:-31 91:34 92:18 93:12 94:-10 95:21 96:13 106:-15 107:39 112:-9 113:-36
#n _ @job	0:30 1:-26 2:-8 3:39 4:55 5:16 6:-15 11:-11 13:-15 27:17 29:20 30:-8 33:24 37:28 39:-8 40:18 42:-15 43:12 47:18 70:-21 71:-8 72:46 74:-45 76:-11 77:20 80:-14 83:-13 86:13 88:29 91:8 92:55 95:14 99:-8 105:-11 106:16 113:22 123:-33
)~"
R"~(@job _ the	0:-17 1:-8 2:9 4:10 16:22 23:10 29:11 30:15 35:10 37:10 40:-18 42:-19 43:9 44:24 46:22 47:54 63:-15 64:-11 70:8 71:52 72:15 73:9 75:-12 77:-24 86:-8 88:-15 90:-13 91:-18 92:24 96:17 99:-11 106:-8 107:9 112:-11
in _ ~	45:-10 68:16 84:22 97:-9
pull _ slot	71:16
~ _ #n	3:17 40:-9 48:-21 49:11 84:12 116:9 119:-14 120:83
slot _ and	2:8 3:32 35:-21 36:-8 40:22 41:17 63:-9 71:10 76:-8 77:21 81:23 91:-17 92:14 96:-27 123:16
and _ slot	3:11 13:10 18:10 40:24 69:9 70:-9 77:-14 94:21 96:-9
#n _ the	0:27 1:45 2:-23 3:-21 4:24 5:-13 9:-10 11:-13 13:-43 17:-17 18:-19 20:-9 21:-10 22:-16 23:13 24:-8 27:-17 30:-20 33:32 35:66 36:42 37:-16 38:-15 39:-12 40:75 41:8 42:-17 43:-23 44:20 45:19 46:8 49:-14 63:-13 69:30 70:14 71:10 73:-16 74:-17 76:33 77:29 79:-20 80:43 81:24 86:-14 87:-15 88:30 89:16 91:-19 92:49 95:18 96:36 97:-10 100:13 106:-26 107:-11 108:-10 112:28 113:-9 114:-11 115:22 118:-9 123:-24
the _ job	2:-23 3:18 9:35 11:22 16:-12 18:-9 23:23 24:14 36:8 40:15 46:-11 63:-13 64:-14 70:17 74:8 75:-19 77:-15 83:10 90:-11 92:16 95:-11 96:9 107:8 113:-25
#o _ @job	44:12 46:-10 76:26 77:27 89:9 94:8 113:11
@job _ #r	2:11 3:20 4:-10 17:-13 40:-10 44:8 46:11 47:-8 70:24 74:-10 88:19 96:8
#r _ ~	52:9
#n _ #r	2:19 3:-13 4:46 35:9 41:10 53:12 74:16 77:-9 88:-14 92:13 95:31 96:-10 117:16
#r _ fret	74:9
#n $	0:48 1:47 2:14 3:17 4:97 5:28 7:-17 8:-19 9:-25 10:-22 11:-10 12:-28 13:134 14:-32 15:84 16:58 17:30 18:19 19:-16 20:25 21:29 22:19 23:53 24:22 25:-22 26:-11 27:57 28:-31 29:-46 30:-35 31:-18 32:-21 33:12 34:-31 35:66 36:38 37:97 38:29 39:-14 40:-32 41:-31 42:39 43:-12 44:-31 45:-16 46:-21 47:48 48:-9 49:-47 50:-26 52:-20 53:30 55:-8 56:-15 57:-11 58:33 59:35 60:-18 61:-22 62:-19 64:21 67:-19 68:-25 69:36 70:14 72:84 73:-34 74:-11 76:-36 77:-37 78:12 79:15 80:-32 81:21 82:13 83:37 86:-20 87:-12 88:-13 89:12 90:-29 91:-28 92:30 94:23 95:10 96:54 97:15 99:-19 100:-27 102:-14 103:-30 104:36 105:-10 106:27 107:-10 108:44 109:-30 110:9 111:-21 112:42 113:53 114:-34 115:-23 117:-32 120:-9 121:-14 122:9 123:-24
*	0:20 1:91 3:-60 4:13 6:20 7:37 8:79 9:127 10:9 11:145 12:82 13:118 14:151 15:9 16:17 17:91 18:-21 19:72 20:75 21:95 22:107 23:96 24:36 25:118 26:93 27:36 28:93 29:180 30:56 31:97 32:94 33:116 34:135 35:8 36:-37 37:95 38:-35 39:101 40:-70 41:-62 42:60 43:-10 44:-23 45:-83 46:29 47:23 48:-21 49:-9 50:11 51:31 52:95 53:-21 54:88 56:81 57:76 59:65 60:36 61:72 62:55 63:48 64:57 66:-17 67:-19 68:-8 69:-67 70:-84 71:-74 72:-34 73:17 74:-109 75:-39 76:29 77:-19 78:-19 79:-41 80:-19 81:-64 82:-12 83:-32 84:-31 85:17 86:54 88:65 89:-21 90:80 91:-24 92:-52 93:63 94:8 95:-14 96:10 97:16 98:74 99:61 100:69 101:48 102:85 103:50 104:-9 105:92 106:53 107:144 108:-13 109:60 111:70 112:95 113:-59 114:-11 115:-54 116:86 117:52 118:20 119:-10 120:29 121:40 122:104 123:203
wire==	2:-21 3:-22 4:-23 5:61 6:23 7:11 8:51 9:76 10:57 11:-32 12:-13 13:-28 14:-17 15:-9 16:-19 17:-22 18:69 19:47 20:65 21:32 23:32 24:19 25:-21 26:-17 27:-16 28:-27 29:-43 30:-16 31:19 32:27 34:-27 35:-19 36:-17 37:-12 38:23 39:-11 40:-14 41:-11 42:24 43:-8 44:-14 45:41 46:-12 47:-13 48:156 49:13 50:24 52:-10 54:-15 56:-12 57:-25 59:-8 60:-10 62:-8 63:-10 64:-12 66:-17 67:18 69:-22 70:35 71:14 72:37 73:-21 74:-20 75:-19 76:-13 77:21 78:15 79:-10 81:-14 82:40 83:-19 84:-25 86:-11 87:33 88:-15 89:-15 90:52 91:-22 92:-18 94:-9 96:-9 97:-16 98:-10 99:-15 100:-8 101:-8 102:-12 103:-10 104:-8 105:-8 106:8 107:-16 109:-8 111:-10 112:-13 113:-14 115:24 117:17 119:34 120:45 122:-9 123:-24
#d length	1:9 3:8 79:11 87:-9
wire	2:-23 3:-22 4:-23 5:59 6:22 7:10 8:92 9:130 10:69 11:-36 12:-16 13:-29 14:-20 15:-9 16:-21 17:-33 18:68 19:56 20:65 21:29 23:25 24:26 25:-23 26:-20 27:-19 28:-28 29:-45 30:-17 31:32 32:23 34:-30 35:-20 36:-17 37:-12 38:22 39:-11 40:-14 41:-11 42:19 43:-8 44:-15 45:41 46:-12 47:-13 48:156 49:13 50:15 52:-10 54:-15 56:-12 57:-26 59:-9 60:-11 61:-8 62:-8 63:-11 64:-12 66:-18 67:18 69:-22 70:34 71:14 72:36 73:-21 74:-20 75:-19 76:-13 77:21 78:14 79:-10 81:-15 82:35 83:-20 84:-26 86:-12 87:33 88:-15 89:-16 90:51 91:-22 92:-18 93:-8 94:-10 96:-9 97:-16 98:-10 99:-16 100:-9 101:-8 102:-12 103:-10 104:-8 105:-9 106:8 107:-16 109:-9 111:-11 112:-13 113:-14 115:24 117:16 119:33 120:44 122:-14 123:-26
#n wire	18:8 90:9 123:16
@wire	0:63 1:74 2:-38 3:-79 4:-51 5:57 6:113 7:59 8:198 9:184 10:-43 11:-87 12:-65 13:-63 14:-53 15:-40 16:-50 17:-59 18:185 19:174 20:134 21:70 22:92 23:70 24:108 25:-62 26:-47 27:-82 28:-56 29:-97 30:-49 31:142 32:106 33:23 34:-66 35:16 36:34 37:18 38:154 39:22 40:-41 41:-51 42:-36 43:-33 44:-32 45:41 46:-33 47:-27 48:-79 49:198 50:213 51:-20 52:-33 53:-27 54:-55 55:-15 56:-29 57:-34 58:-21 59:-33 60:-20 61:-25 62:-25 63:-22 64:-27 65:153 66:133 67:103 68:80 69:-8 70:-30 71:9 72:-25 73:-55 74:-27 75:-38 76:-29 77:-36 78:129 80:88 81:23 82:-38 83:-27 84:-33 85:-22 86:-38 87:131 88:-34 89:-27 90:-43 91:-59 92:-30 93:-23 94:-27 95:-27 96:-30 97:-41 98:-38 99:-36 100:-34 101:-26 102:-32 103:-31 104:-27 105:-30 106:-28 107:-42 108:-15 109:-33 110:-24 111:-27 112:-28 113:-29 114:-22 115:141 116:10 117:105 118:52 119:-39 120:-43 121:-30 122:-39 123:21
wire @wire	5:14 8:-10 9:-44 18:-9 20:8 21:10 23:9 24:9 35:-8 38:-26 45:20 48:-12 50:22 65:35 67:26 71:22 75:-10 80:17 81:-13 84:-12 115:14 119:-10
@wire slot	18:14 24:-10
#n long	3:20 5:10 84:22
~ job	2:29 16:22 43:-10 63:15 73:-9 74:-13 77:-15 86:10 91:-10 92:-12
@job wire	23:13 71:10 90:15
@wire wire	5:13 7:18 8:-16 9:-44 18:-26 19:9 20:-23 21:8 22:9 24:17 31:-12 32:59 33:28 38:-14 45:17 48:-31 50:11 65:-18 68:13 78:23 87:61 117:15
wire the	1:8 5:18 9:-38 18:-28 20:-21 21:30 23:12 38:9 45:19 48:-24 50:14 65:-13 68:14 78:24 80:-8 87:-10 115:15
the @wire	0:-10 2:-13 3:-11 4:-14 5:33 6:10 7:41 8:43 9:81 10:-10 11:-26 12:-24 13:-17 14:-16 16:-14 17:-19 18:13 19:73 20:15 22:61 24:31 25:-19 26:-15 27:-27 28:-19 29:-27 30:-12 32:75 33:24 34:-21 35:-13 37:-17 38:14 39:-19 40:-10 42:-8 45:18 46:-9 47:-10 48:-39 49:44 50:40 52:-9 54:-14 56:-9 59:-8 65:33 66:64 67:27 68:28 69:-12 70:-11 75:-13 77:-10 78:49 79:32 81:14 82:-8 84:-8 86:-10 87:32 89:-8 90:-12 91:-12 92:-10 97:-9 98:-9 99:-15 102:-13 103:-8 105:-8 107:-8 109:-9 111:-8 115:58 116:46 117:58 118:58 119:-8 120:-9 121:-12 123:-9
@wire length	1:8 49:-11 65:8 67:8 79:16 80:14 87:-16
#n pull	38:12 78:12
@wire job	23:13 24:9 35:10 69:-11 75:-9
job the	0:-15 2:11 3:32 4:-12 11:21 13:15 15:-11 18:-9 23:10 24:12 27:13 33:8 40:-11 41:18 42:-25 43:-9 46:-21 47:-28 63:-22 64:-10 70:24 71:31 74:-30 75:-31 77:-21 82:9 83:8 84:-8 88:-10 89:14 90:19 93:13 94:14 96:47 107:12 112:-11 113:-39
the @job	0:25 1:32 3:62 4:19 5:15 6:32 7:-21 8:-31 9:-35 10:-17 11:41 12:-25 13:51 14:-26 15:50 16:54 17:21 18:18 19:-18 20:-23 21:-24 22:-18 23:8 24:18 25:-39 26:-23 27:32 28:-34 31:-22 32:-26 33:-25 34:-26 36:24 37:-43 38:-17 39:-24 41:23 42:46 43:18 44:30 45:-13 46:46 47:44 49:-8 50:-11 51:-9 52:-21 53:-15 54:-27 56:-19 57:-12 58:-12 59:-15 60:-15 61:-15 62:-20 63:81 64:36 65:-9 66:-15 67:-8 68:-17 70:38 71:31 72:36 75:-22 78:-11 79:-15 80:-24 81:15 82:27 83:19 84:-19 85:-14 86:33 87:-24 88:14 89:9 90:48 91:22 92:49 93:15 94:27 95:18 96:61 97:-13 98:-19 99:-27 100:-23 101:-23 102:-33 103:-18 104:9 105:14 106:81 107:61 108:-9 109:-19 110:-20 111:-17 112:64 113:67 114:40 116:-19 117:-20 118:-25 119:-9 120:-13 121:-12 122:-8 123:-54
@job job	0:-11 2:-18 3:16 4:-14 11:20 13:-29 23:11 24:14 27:8 33:14 40:11 41:17 43:-12 46:-9 63:-11 69:-8 70:27 73:-12 74:-13 75:-22 77:-18 81:-13 83:9 88:-8 89:8 90:-20 91:21 92:8 93:19 94:9 95:12 96:17 106:-9 107:26 113:-38
in _ the	2:8 3:9 13:10 18:9 27:12 28:-8 35:8 38:15 43:10 49:9 67:23 80:-11 108:11 109:12
length _ length	3:8
#d _ #n	1:12 38:-14 73:20 74:-17 79:51 81:15 84:-15 119:13 120:-13
in _ #n	0:-15 3:60 4:-9 5:14 16:-12 18:21 21:8 24:8 33:11 35:-38 38:18 40:22 41:11 45:-11 69:-14 71:16 73:8 74:13 76:-11 81:12 86:8 90:30 95:-9 96:-12 104:-11 110:35 116:8 119:-11 120:9 123:57
and _ wire	5:-8 82:35
#n _ @wire	0:-29 1:36 3:-11 8:-8 18:-11 20:-8 31:-9 35:-17 37:58 38:52 39:-8 45:11 49:60 50:-8 65:38 69:-20 71:11 78:20 80:12 81:47 115:46 116:-21 123:-10
)~"
R"~(@wire _ #n	0:35 1:-14 8:-8 9:-9 18:44 36:12 38:41 41:-11 49:-26 50:31 65:71 67:54 68:11 79:10 81:-14 97:-8 116:-8
and _ long	4:25 32:19
#n _ ~	2:10 16:14 39:33 47:12 48:-10 63:10 74:-9 76:34 80:-16 84:-16 91:-10 97:17 118:9
long _ job	4:-10 27:25
~ _ job	2:8 16:8 63:12
job _ wire	90:15 123:16
@job _ @wire	18:30 71:11
wire _ wire	5:11 9:-21 18:-17 21:13 38:-10 50:13 67:11 68:11 87:-8 115:13
@wire _ @wire	5:12 9:-19 18:-21 38:-11 50:11 67:14 68:11 87:-22
@wire _ the	0:-9 5:10 6:11 9:-19 18:17 20:30 21:20 22:-16 33:24 35:-17 38:70 48:-14 66:22 67:-17 68:35 75:-8 78:33 87:8 116:18 123:8
wire _ @wire	1:8 5:19 7:8 9:-37 18:-26 20:-19 21:30 23:12 38:18 45:19 48:-24 50:14 65:-13 68:14 78:24 80:-8 87:-21 115:15
@wire _ #d	1:27 3:-24 8:29 9:-9 38:43 45:-11 49:-9 50:32 66:-16 67:68 68:21 78:-9 79:15 80:23 81:-9 87:24
slot _ pull	74:-9 94:10
the _ wire	7:18 9:-33 18:-21 19:-10 20:-16 22:10 23:11 24:16 31:-8 32:61 33:28 45:12 48:-16 65:-16 78:27 87:27
#o _ the	0:24 2:-9 3:33 11:12 17:-8 20:12 33:-23 35:-13 36:11 41:-15 42:-8 46:-25 52:16 69:20 70:15 74:9 77:-9 86:-10 89:17 91:12 92:24 94:31 109:47
@wire _ @job	1:-8 18:21 35:25 71:11 81:27
@job _ #n	1:-12 2:8 3:13 13:-9 16:-12 30:8 33:-11 35:29 36:-17 40:28 43:18 44:-22 45:-11 71:11 74:41 76:-15 77:14 92:23 96:10 112:13 113:-8
#r _ #r	74:27
#r _ job	3:-20 13:-12 16:32 17:-9 35:-11 41:20 42:-14 43:19 44:38 69:-13 70:27 74:-17 76:13 77:11 79:-10 86:-10 88:45 89:13 96:18 106:-9 113:-8 114:-8 123:24
job _ @job	0:-22 2:11 3:31 4:9 11:21 13:9 18:-10 23:10 24:12 27:13 40:-11 41:18 42:-25 43:-9 46:-18 47:-28 63:-22 64:-10 70:24 71:31 74:-30 75:-32 77:-22 82:9 83:8 84:-8 88:-10 89:14 90:18 93:13 94:14 96:47 107:12 112:-11 113:-39
@job _ @job	2:-14 3:-26 5:21 13:-22 15:-8 16:-9 17:-9 26:22 35:9 40:39 42:-15 44:-10 46:21 47:-10 69:-8 74:28 75:-10 77:12 81:8 88:-14 91:10 94:10 106:-10 113:55
@job $	0:59 1:56 2:-15 4:83 5:27 6:33 7:-21 8:-32 9:-32 10:-13 12:-21 13:120 14:-32 15:112 16:55 17:26 18:63 19:-18 20:-20 21:-17 22:-20 23:55 24:43 25:-24 27:104 28:-27 29:-38 30:-15 31:-21 32:-20 33:63 34:-30 35:17 36:89 37:-28 38:-9 39:-18 40:-17 41:-34 42:80 43:-10 44:-32 45:36 46:-20 47:26 49:-10 50:-8 51:-8 52:-14 53:-11 54:-15 56:-14 57:-12 58:-8 59:-12 60:-11 61:-17 62:-17 63:33 65:-9 66:-10 68:-10 69:32 70:-24 73:-11 75:-16 76:-34 77:-13 78:-9 80:-18 81:9 82:42 83:53 85:-10 86:20 87:-10 88:12 89:8 90:-18 94:11 97:-9 98:-14 99:-13 100:-14 101:-10 102:-21 103:-15 104:15 106:64 107:-27 108:-9 109:-18 110:-13 111:-13 113:68 114:-14 115:-8 116:-11 117:-12 118:-15 120:-9 121:-11 122:-10 123:-25
which==	0:86 1:58 2:31 3:-19 4:-9 5:91 6:29 7:42 8:-17 9:11 10:32 11:47 12:44 13:39 14:49 15:62 16:29 17:62 18:13 19:45 20:-20 21:-9 22:41 23:42 24:80 25:61 26:48 27:25 29:35 30:-8 31:17 32:39 33:39 34:19 35:-26 36:-19 37:-17 38:-18 39:-19 40:-9 41:-18 42:-23 43:-22 44:-22 45:-10 46:-25 47:-12 49:-12 51:-8 52:-12 54:-14 56:-8 57:-11 60:-8 62:-8 63:-18 64:-15 65:-14 66:-10 68:-9 69:-9 70:-13 71:-9 72:-9 73:-12 74:-10 75:-9 76:-13 77:-9 78:-10 80:-11 81:-9 82:-15 86:-13 88:-24 89:-10 90:-20 91:-8 92:-14 93:-8 94:-11 96:-16 97:-12 98:-15 99:-10 100:-17 101:-14 102:-20 103:-9 104:-11 106:-19 107:-19 109:-14 110:-11 111:-9 112:-17 113:-11 114:-9 115:-8 116:-11 117:-12 118:-8 119:9 121:-9 122:-10 123:-36
offcut==	0:67 1:32 3:-11
suit==s	0:38 1:-8 8:-8 9:-12 18:86 20:57 33:-9 34:11 53:8
of==	0:27 1:-16 3:22 4:26 5:16 6:-11 8:15 12:-9 13:-20 14:-28 16:26 17:-9 18:-16 19:14 20:30 21:14 22:31 24:21 25:19 26:-15 27:45 28:8 29:-17 31:-33 32:10 36:-18 37:-36 38:47 39:-25 40:30 41:27 43:45 44:17 45:-28 46:33 47:-29 48:8 49:57 52:-11 53:9 54:-29 55:-15 56:9 57:8 58:-16 59:10 60:-17 61:12 62:27 63:-47 64:-23 65:78 67:60 69:28 70:56 71:49 72:-9 78:47 79:19 80:34 81:65 82:8 83:14 85:9 86:36 87:31 88:-8 89:51 90:32 91:15 92:-20 94:9 95:10 97:43 98:10 99:-12 100:10 101:-19 102:-33 103:-8 104:-35 106:8 107:11 109:14 110:-25 111:-22 112:-12 113:-24 114:24 115:57 116:20 117:-16 118:-22 120:29 121:18
which	0:86 1:58 2:31 3:-19 4:-9 5:91 6:29 7:42 8:-17 9:11 10:32 11:47 12:44 13:39 14:49 15:62 16:29 17:62 18:13 19:45 20:-20 21:-9 22:41 23:42 24:80 25:61 26:48 27:25 29:35 30:-8 31:17 32:39 33:39 34:19 35:-26 36:-19 37:-17 38:-18 39:-19 40:-9 41:-18 42:-23 43:-22 44:-22 45:-10 46:-25 47:-12 49:-12 51:-8 52:-12 54:-14 56:-8 57:-11 60:-8 62:-8 63:-18 64:-15 65:-14 66:-10 68:-9 69:-9 70:-13 71:-9 72:-9 73:-12 74:-10 75:-9 76:-13 77:-9 78:-10 80:-11 81:-9 82:-15 86:-13 88:-24 89:-10 90:-20 91:-8 92:-14 93:-8 94:-11 96:-16 97:-12 98:-15 99:-10 100:-17 101:-14 102:-20 103:-9 104:-11 106:-19 107:-19 109:-14 110:-11 111:-9 112:-17 113:-11 114:-9 115:-8 116:-11 117:-12 118:-8 119:9 121:-9 122:-10 123:-36
^ which	0:48 2:9 3:-8 5:38 6:26 7:17 9:9 10:40 11:60 12:44 13:48 14:15 16:48 17:18 18:12 19:37 22:46 23:42 24:35 25:33 26:37 27:11 29:29 31:27 33:42 34:30 35:-17 36:-10 37:-9 38:-10 42:-15 43:-13 44:-12 46:-17 50:-13 52:-8 54:-8 63:-12 64:-10 65:-9 73:-8 82:-10 83:-10 86:-9 88:-8 90:-14 94:-8 96:-12 98:-11 100:-14 101:-10 102:-16 106:-14 107:-11 109:-10 112:-12 113:-8 123:-38
offcut	0:68 1:25 3:-11 5:21 38:10
which offcut	0:13 5:13
suit	0:26 6:-8 8:-9 9:-13 18:162 20:57 33:-10 34:11 53:8 73:-16 123:-8
suit slot	0:9
of	0:14 3:10 4:23 5:13 6:-14 12:-12 13:-22 14:-31 16:25 17:-10 18:-19 20:36 21:13 22:25 24:18 25:11 27:43 31:-36 33:50 34:-8 35:22 36:10 37:12 38:37 39:17 40:28 41:25 43:43 44:15 45:-37 46:17 47:-30 49:45 51:-11 52:24 53:21 54:-31 55:-16 58:-16 59:8 60:-21 61:10 62:25 63:-49 64:-26 65:62 67:51 69:49 70:51 71:46 72:-10 73:-8 78:45 79:27 80:30 81:50 83:12 85:8 86:34 87:17 88:-10 89:50 90:30 91:12 92:-21 94:8 95:10 97:42 99:-17 100:9 101:-21 102:-34 103:-9 104:-26 108:-10 109:13 110:-14 112:-13 113:-25 114:22 115:61 116:22 117:8 118:-23 120:27 121:17 123:-12
#n of	0:29 2:-15 3:80 4:-11 5:-30 6:-9 8:-9 13:-34 15:-11 18:-19 19:-8 20:-11 21:-11 22:-15 23:-13 24:-14 27:-28 28:8 29:-8 30:-12 33:24 36:16 37:13 38:-16 39:-26 40:47 41:21 42:-26 43:30 44:-32 45:-20 46:-12 47:-8 50:-8 53:-8 56:9 57:8 61:25 64:-10 65:42 67:-12 69:52 70:56 71:14 72:-13 73:-15 75:-19 76:28 77:64 79:-9 80:10 81:10 82:-10 83:-9 86:-17 87:-9 88:28 89:16 90:53 91:13 93:-8 94:16 95:29 96:23 97:24 98:11 106:-18 107:-10 112:-13 113:-16 115:50 116:48 117:-13 118:-10 120:-14 123:13
of @job	0:-28 1:-12 2:13 3:23 4:39 6:24 8:-8 13:17 15:-14 17:15 18:13 20:-12 23:-11 29:10 30:-11 33:-20 35:24 40:9 41:46 43:56 44:16 69:16 70:-8 71:9 72:-10 76:18 77:10 81:19 86:29 88:23 89:32 90:8 91:-8 92:-10 95:9 106:36 107:-8 112:-11 113:-13 114:12 123:-28
which _ suit	0:11
offcut _ slot	0:14
suit _ #n	0:20 18:42
slot _ of	0:14 1:-25 3:44 4:11 5:-8 13:-12 17:-8 33:-25 35:-14 36:27 40:17 41:23 69:40 70:18 73:-12 74:-8 75:-8 76:21 77:25 81:-11 90:15 92:14 94:16 96:12 123:12
piec==e	0:101 1:95 2:-8 3:-40 4:-27 5:9 11:-9 13:-24 15:-8 16:-15 17:-17 18:-10 22:37 23:59 26:-8 27:-8 29:-14 30:-10 33:80 35:94 36:87 37:89 39:115 40:-20 41:-16 42:-9 43:-8 44:-18 45:-23 64:-11 67:8 68:90 69:91 70:-30 71:-8 72:-10 74:-20 76:-21 77:-16 80:-12 81:-31 82:-10 83:-8 84:-8 88:-14 90:-18 91:-12 92:-11 94:-13 96:-23 100:-8 101:-8 104:-10 106:-9 107:-9 112:-10 113:-9 123:40
fit==s	0:79 1:-9 4:-11 33:-8
piec	0:101 1:95 2:-8 3:-40 4:-27 5:9 11:-9 13:-24 15:-8 16:-15 17:-17 18:-10 22:37 23:59 26:-8 27:-8 29:-14 30:-10 33:80 35:94 36:87 37:89 39:115 40:-20 41:-16 42:-9 43:-8 44:-18 45:-23 64:-11 67:8 68:90 69:91 70:-30 71:-8 72:-10 74:-20 76:-21 77:-16 80:-12 81:-31 82:-10 83:-8 84:-8 88:-14 90:-18 91:-12 92:-11 94:-13 96:-23 100:-8 101:-8 104:-10 106:-9 107:-9 112:-10 113:-9 123:40
which piec	0:73 1:-22 5:22
piec fit	0:20 1:-8
which _ fit	0:12
piec _ slot	0:13
fit _ #n	0:17
do==	0:9 1:-18 2:36 3:85 4:30 5:35 6:46 7:12 9:62 10:15 11:17 12:9 14:-23 15:45 17:66 18:9 19:-15 21:-21 23:-21 24:16 25:21 26:9 27:30 28:24 29:24 30:-11 32:58 33:34 34:58 35:-23 36:-21 38:-13 39:-12 40:-17 41:-22 42:-19 43:-13 44:-19 46:-11 47:-16 48:-8 49:-23 50:10 52:12 53:-10 56:16 62:-8 63:59 64:14 65:-17 68:-19 69:-9 70:-12 71:-10 74:-20 76:-18 77:-8 80:-9 81:-13 82:-11 84:-9 85:11 86:-9 88:-11 90:-16 91:-12 92:-8 94:-10 95:-9 96:-10 99:10 101:-10 103:-9 104:-17 105:10 106:-19 107:-19 109:12 110:-21 112:27 113:39 114:-26 115:-8 116:-13 117:-11 119:-15 121:25 123:26
)~"
R"~(i==	0:26 1:9 2:18 3:10 4:-12 5:18 6:40 7:9 9:28 10:30 11:14 13:-27 14:21 16:35 17:13 18:16 19:-12 20:-10 21:-11 22:34 24:-17 25:-26 26:52 27:-23 28:30 29:25 30:28 32:21 33:9 34:49 35:-11 36:-24 37:-36 38:-15 39:9 41:-15 42:-10 43:-9 44:-12 45:-16 47:-24 48:-19 49:-20 51:-8 52:-26 53:-21 54:8 56:-19 57:-22 61:-14 63:23 64:8 65:26 66:-15 68:24 72:-13 73:21 74:19 76:22 77:8 78:10 79:-25 83:-13 86:-11 87:15 88:-20 90:-41 91:-9 92:-24 94:-9 96:18 99:11 100:-20 101:-12 102:-22 104:29 105:17 106:24 107:30 108:-12 109:70 110:86 111:-12 112:-13 113:-29 114:17 115:10 116:-21 117:-20 118:11 119:-9 120:-13 122:33 123:41
use==	1:67 3:26 4:-8 5:71 8:-27 9:12 11:-9 13:-9 17:-10 18:16 19:-9 20:11 21:-11 22:36 23:-17 25:25 33:11 35:69 36:-18 37:-23 39:17 69:-14 71:-8 72:12 76:14 81:59 84:-12 85:30 90:-8 96:-9 100:42 101:42 109:-13
in==	2:-16 3:36 4:-36 5:-9 6:-20 7:32 8:19 10:25 11:-19 12:10 13:-16 14:25 15:-17 16:-24 17:-42 18:69 20:47 21:47 22:34 25:20 26:13 28:55 29:-11 30:-16 31:-32 33:-12 34:22 35:70 36:-25 37:-20 38:34 39:15 41:-16 43:-23 44:-35 45:13 46:26 47:-8 48:17 49:13 50:-22 51:-23 52:12 53:22 54:48 56:-8 58:21 59:-11 62:15 63:-22 65:26 66:-10 67:-16 68:-8 69:-36 70:-26 71:24 72:-13 73:-8 74:59 76:-17 78:48 79:-30 81:34 82:9 87:-29 88:-29 89:-13 90:53 91:-26 92:-24 93:22 94:11 95:32 96:-24 97:17 98:-31 99:-27 100:-13 102:-13 103:10 105:-15 106:-29 108:24 109:45 110:51 111:-27 112:8 113:-22 114:21 116:21 117:-12 118:-21 122:10 123:-29
do	0:9 1:-18 2:36 3:85 4:30 5:35 6:46 7:12 9:62 10:15 11:17 12:9 14:-23 15:45 17:66 18:9 19:-15 21:-21 23:-21 24:16 25:21 26:9 27:30 28:24 29:24 30:-11 32:58 33:34 34:58 35:-23 36:-21 38:-13 39:-12 40:-17 41:-22 42:-19 43:-13 44:-19 46:-11 47:-16 48:-8 49:-23 50:10 52:12 53:-10 56:16 62:-8 63:59 64:14 65:-17 68:-19 69:-9 70:-12 71:-10 74:-20 76:-18 77:-8 80:-9 81:-13 82:-11 84:-9 85:11 86:-9 88:-11 90:-16 91:-12 92:-8 94:-10 95:-9 96:-10 99:10 101:-10 103:-9 104:-17 105:10 106:-19 107:-19 109:12 110:-21 112:27 113:39 114:-26 115:-8 116:-13 117:-11 119:-15 121:25 123:26
piec do	0:14
i	0:26 1:9 2:18 3:10 4:-12 5:18 6:40 7:9 9:28 10:30 11:14 13:-27 14:21 16:35 17:13 18:16 19:-12 20:-10 21:-11 22:34 24:-17 25:-26 26:52 27:-23 28:30 29:25 30:28 32:21 33:9 34:49 35:-11 36:-24 37:-36 38:-15 39:9 41:-15 42:-10 43:-9 44:-12 45:-16 47:-24 48:-19 49:-20 51:-8 52:-26 53:-21 54:8 56:-19 57:-22 61:-14 63:23 64:8 65:26 66:-15 68:24 72:-13 73:21 74:19 76:22 77:8 78:10 79:-25 83:-13 86:-11 87:15 88:-20 90:-41 91:-9 92:-24 94:-9 96:18 99:11 100:-20 101:-12 102:-22 104:29 105:17 106:24 107:30 108:-12 109:70 110:86 111:-12 112:-13 113:-29 114:17 115:10 116:-21 117:-20 118:11 119:-9 120:-13 122:33 123:41
do i	0:11 2:42 4:-13 5:31 6:16 9:11 10:24 11:25 12:22 13:-8 16:26 17:38 18:19 24:-14 25:-11 26:39 28:44 29:-15 31:-14 32:33 33:-30 34:42 91:-8 109:-9 110:-14 114:-10 123:-33
use	1:67 3:26 4:-9 5:68 8:-27 9:11 11:-10 13:-9 17:-11 18:16 19:-9 20:10 21:-11 22:36 23:-17 25:35 26:-8 27:-8 29:-8 30:-8 33:10 35:69 36:-19 37:-23 39:17 69:-14 70:-8 71:-8 72:21 76:13 81:59 82:18 84:-13 85:35 90:-9 96:-9 100:41 101:42 109:-13
i use	0:11 3:39 5:36 18:23 35:-18 123:-21
use in	0:22
which _ do	5:-12 6:26 7:21 9:-16 10:23 11:-11 12:13 19:11 24:9 32:17
piec _ i	0:17
do _ use	0:10 5:9 9:9 25:9 123:11
i _ in	0:22 11:8 52:10 71:11 107:10 110:14
use _ slot	0:30
#r $	1:-11 9:-8 11:-8 17:8 21:8 27:-8 28:-13 30:22 31:-9 34:-9 35:40 44:-8 46:52 51:64 52:-10 53:85 60:-8 61:-9 62:-10 63:-8 64:-10 69:30 74:40 88:-9 92:22 105:22 107:-10 108:42 110:50 111:29 117:56 118:-8 123:-25
what==	0:82 1:46 2:19 3:-34 4:28 5:114 6:15 7:34 8:75 9:37 10:90 11:91 12:49 13:57 14:-18 15:-14 16:72 17:59 18:35 19:72 20:21 21:52 22:69 23:45 24:81 25:55 26:46 27:67 29:97 30:47 31:31 32:25 33:105 34:61 35:-24 36:-23 37:-29 38:-25 39:-28 40:-14 41:-24 42:-35 43:-29 44:-23 46:-25 47:-18 49:-16 50:-21 51:-19 52:-20 53:-16 54:-25 56:-14 57:-14 58:-12 59:-12 60:-16 61:-13 62:-17 63:-26 64:-27 65:-18 66:-17 68:14 69:-12 70:-15 71:-19 72:-12 73:-12 75:-12 76:-23 77:-10 78:-18 80:-14 81:-10 82:13 83:15 84:-10 85:-15 86:-23 88:-22 89:-12 90:-17 91:-13 92:-14 93:-17 94:-15 95:-13 96:-18 97:-11 98:-18 99:-16 100:-21 101:-17 102:-22 103:47 104:-26 105:-21 106:-28 107:-27 108:-24 109:-30 110:-19 111:-19 112:-8 113:-19 114:-16 115:-13 116:-15 117:-23 119:-13 120:-18 121:-18 122:27 123:-21
stick==	2:-10 4:-10 5:25 6:17 8:-10 13:-8 31:-11 32:11 37:16 38:35 48:28 49:-27 65:53 67:16 70:115 71:-8 72:22 78:17 81:-17 95:-9 115:20 116:16 117:-8 123:-11
end==	1:30 2:-12 3:-11 9:8 30:24 35:8 37:17 38:51 42:15 68:24 69:25 70:-10 71:-13 75:17 88:26 89:-8 95:12 113:12 123:-9
what	0:82 1:46 2:19 3:-34 4:28 5:114 6:15 7:34 8:75 9:37 10:90 11:91 12:49 13:57 14:-18 15:-14 16:72 17:59 18:35 19:72 20:21 21:52 22:69 23:45 24:81 25:55 26:46 27:67 29:97 30:47 31:31 32:25 33:105 34:61 35:-24 36:-23 37:-29 38:-25 39:-28 40:-14 41:-24 42:-35 43:-29 44:-23 46:-25 47:-18 49:-16 50:-21 51:-19 52:-20 53:-16 54:-25 56:-14 57:-14 58:-12 59:-12 60:-16 61:-13 62:-17 63:-26 64:-27 65:-18 66:-17 68:14 69:-12 70:-15 71:-19 72:-12 73:-12 75:-12 76:-23 77:-10 78:-18 80:-14 81:-10 82:13 83:15 84:-10 85:-15 86:-23 88:-22 89:-12 90:-17 91:-13 92:-14 93:-17 94:-15 95:-13 96:-18 97:-11 98:-18 99:-16 100:-21 101:-17 102:-22 103:47 104:-26 105:-21 106:-28 107:-27 108:-24 109:-30 110:-19 111:-19 112:-8 113:-19 114:-16 115:-13 116:-15 117:-23 119:-13 120:-18 121:-18 122:27 123:-21
^ what	0:16 1:55 2:20 3:-14 4:32 5:41 6:28 7:42 8:65 9:11 10:77 11:48 12:64 15:11 16:43 17:56 18:37 19:36 21:42 22:55 23:108 24:53 25:68 26:17 27:68 28:37 29:48 30:41 31:57 32:36 33:64 34:77 35:-15 36:-15 37:-11 38:-14 39:-14 40:-11 41:-9 42:-22 43:-20 44:-15 46:-19 47:-10 49:-8 50:-15 51:-15 52:-15 53:-12 54:-19 56:-9 57:-9 58:-9 59:-9 60:-11 61:-8 62:-9 63:-21 64:-16 65:-11 67:-9 68:-9 69:-10 70:-11 71:-12 72:-9 73:-8 74:-13 75:-8 76:-11 78:-9 80:-9 81:-8 82:-27 83:-27 85:-11 86:-13 87:-9 88:-16 89:-8 90:-13 91:-10 92:-10 93:-8 94:-10 95:-10 96:-13 98:-14 99:-11 100:-14 101:-12 102:-28 103:-20 104:-16 105:-12 106:-20 107:-17 108:-17 109:-18 110:-14 111:-15 112:-20 113:-14 114:-13 116:-11 117:-18 118:-13 120:-14 121:-8 122:-12 123:-12
stick	1:-9 2:-20 3:-10 4:-15 5:39 6:49 8:45 9:-29 10:-12 11:-9 13:-13 15:-10 16:-10 18:-9 20:-17 22:-16 23:-9 27:-12 33:-9 35:-11 37:10 38:10 40:-13 42:-13 44:-18 48:46 49:106 50:-12 54:-10 64:-8 65:107 66:64 67:-13 69:-11 70:145 71:-21 72:18 74:-11 76:-10 79:-9 80:-13 81:-28 87:-23 88:49 90:-15 95:-20 96:-8 97:-8 115:68 116:60 117:-31 118:-15 119:31 120:35 123:10
what stick	6:19
end	0:-8 1:81 2:-17 3:81 4:-13 5:-8 11:-11 13:-11 16:-17 17:-13 27:40 29:-14 30:40 33:-9 35:12 37:12 38:88 41:41 42:67 43:-15 44:-11 45:-8 49:-8 61:13 65:-9 68:19 69:19 70:-15 71:-15 74:-18 75:13 76:-18 77:14 78:14 79:19 80:-14 81:-9 86:9 88:22 89:-10 90:-21 91:-26 94:-8 95:8 106:17 113:8 120:-8 123:-23
stick end	37:18 38:32 69:30 70:-9 78:20
end _ slot	3:13
fit _ slot	0:8 18:17
short==	0:24 1:-17 2:11 3:-18 5:37 9:47 11:-13 13:-10 16:20 17:-14 22:41 23:-12 27:-12 29:-9 30:-12 33:-10 34:11 35:-10 38:10 39:23 40:-34 41:217 43:12 44:-27 45:-9 50:30 70:-11 71:-8 74:64 76:-11 77:-14 78:24 80:19 85:48 88:-34 90:-16 91:-18 92:-13 94:-8 96:-19 108:-10 123:46
fret==	0:58 1:-18 2:-41 3:43 4:46 6:-20 8:-8 9:-9 11:-11 13:17 15:-15 16:20 17:78 18:-15 20:-14 21:-9 22:-14 23:-11 24:-13 26:-9 27:-53 29:-11 30:-15 32:-9 33:12 35:62 37:-11 40:109 41:74 42:-13 43:-50 44:19 46:-17 47:-12 49:-11 50:18 63:-8 64:-15 65:-8 68:-12 69:-57 71:-8 73:-13 74:33 75:-16 76:131 77:81 78:-11 80:-12 82:-10 83:-8 86:-24 87:-8 89:13 90:19 91:48 92:123 93:-10 94:37 95:21 96:56 97:-12 98:-8 100:-8 102:-8 103:-10 104:-10 106:-26 107:-18 110:-8 112:-14 113:-10 114:-21 116:-10 123:-18
short	0:24 1:-19 2:11 3:-18 5:37 9:46 11:-14 13:-10 16:20 17:-14 22:37 23:-12 27:-12 29:-9 30:-12 33:-11 34:10 35:-10 39:22 40:-34 41:217 43:12 44:-27 45:-9 50:30 70:-11 71:-9 74:64 76:-11 77:-14 78:80 80:19 85:48 88:-34 90:-16 91:-18 92:-13 94:-8 96:-19 97:-8 108:-10 123:42
which short	5:13
short fret	0:32 2:-8 5:45 8:12 9:-8 41:12 78:21
)~"
R"~(fret do	2:26 3:12 17:-11
#n in	0:-10 1:20 2:-8 3:29 16:9 18:-10 22:-10 23:13 33:8 35:36 36:-8 38:-11 41:8 42:9 46:35 53:8 64:11 69:10 70:-8 75:-11 77:15 90:-18 95:14 104:10 105:9 119:8 123:11
in job	1:24 5:16 18:36 33:15 35:-8 41:14 73:13 77:9 90:-11 94:10
which _ fret	5:13
fret _ i	2:29 5:13 17:-11
in _ fret	12:36 35:12
fret _ in	0:18 3:11 35:-10 77:18 96:9
what short	5:38 8:10
what _ fret	5:38 90:10
what piec	0:44 1:-10
piec suit	0:18
what _ suit	0:10
suit _ slot	1:19
suit the	0:9 18:18
piec _ the	0:32
@job _ slot	0:35 1:-8 2:8 4:-12 13:49 35:23 36:-12 44:33 69:26 73:19 74:-14 79:-10
fit the	18:17
for==	0:64 1:48 2:-15 3:49 4:31 5:45 6:75 7:54 8:-24 9:9 10:13 11:34 13:-23 14:-15 15:-29 16:28 17:-16 18:54 20:75 21:23 23:89 24:-25 26:50 27:44 28:8 29:43 30:49 31:20 32:-38 33:-27 35:10 36:101 38:-15 39:-9 40:10 41:-10 42:19 43:-36 44:-39 45:12 46:27 47:-45 52:-14 53:-8 54:-14 55:-10 56:-9 57:-14 59:29 60:-20 62:-15 63:-16 65:-35 67:-19 69:8 71:-22 72:37 73:-44 74:-58 75:-29 77:14 78:14 79:-22 81:18 82:86 83:96 84:19 85:13 86:-34 87:-24 88:-44 89:-21 90:9 91:-30 92:-25 93:-11 94:-27 95:-13 96:-35 98:-27 99:-13 100:10 101:-29 103:20 104:110 107:58 108:-30 109:13 110:-30 112:-13 114:8 115:29 116:-25 117:15 120:-13 121:-12 122:-22 123:-53
for	0:64 1:48 2:-15 3:49 4:31 5:45 6:75 7:54 8:-24 9:9 10:13 11:34 13:-23 14:-15 15:-29 16:28 17:-16 18:54 20:75 21:23 23:89 24:-25 26:50 27:44 28:8 29:43 30:49 31:20 32:-38 33:-27 35:10 36:101 38:-15 39:-9 40:10 41:-10 42:19 43:-36 44:-39 45:12 46:27 47:-45 52:-14 53:-8 54:-14 55:-10 56:-9 57:-14 59:29 60:-20 62:-15 63:-16 65:-35 67:-19 69:8 71:-22 72:37 73:-44 74:-58 75:-29 77:14 78:14 79:-22 81:18 82:86 83:96 84:19 85:13 86:-34 87:-24 88:-44 89:-21 90:9 91:-30 92:-25 93:-11 94:-27 95:-13 96:-35 98:-27 99:-13 100:10 101:-29 103:20 104:110 107:58 108:-30 109:13 110:-30 112:-13 114:8 115:29 116:-25 117:15 120:-13 121:-12 122:-22 123:-53
for job	0:13 1:-15 2:8 3:-21 4:32 5:34 6:40 9:-10 11:14 12:10 13:-15 15:11 16:12 17:37 18:38 23:14 26:-10 29:-22 35:18 36:36 37:-18 44:-9 47:-9 64:-20 69:-9 72:27 76:-8 82:58 83:44 88:-9 92:-8 94:-10 104:24 105:12 112:-25 114:-8 123:29
which _ job	0:8
for _ #n	0:54 1:51 3:25 5:18 6:31 9:-12 11:9 13:-29 15:-13 16:-10 17:24 18:29 22:-14 23:16 24:-9 26:-10 27:21 29:-9 33:39 35:26 36:56 37:-29 38:14 39:-11 40:15 41:23 42:28 44:-15 45:-10 46:10 47:-12 49:11 63:-9 64:-29 66:9 67:-10 69:-8 71:-9 72:26 73:-14 74:-21 76:-24 80:-12 81:19 82:73 83:32 84:8 88:-18 91:-15 92:-17 98:-9 103:-11 104:23 105:9 106:16 107:-12 112:-28 113:-8 114:-12 123:16
piec _ job	0:13
piec for	0:86 1:-8
for the	0:-24 1:-22 2:-18 3:10 4:21 5:11 7:57 8:-17 9:18 10:11 11:9 12:-14 13:-9 14:12 15:-18 16:39 18:12 19:19 20:11 22:-30 23:26 24:-9 25:-10 26:36 27:-15 28:12 29:33 31:-10 33:18 34:11 35:-25 36:51 37:-26 38:12 41:-9 42:15 43:-13 47:-20 49:-12 50:10 51:13 52:-9 56:-8 62:-9 64:-9 68:-9 69:36 73:-15 74:-26 75:-9 76:-8 77:10 78:18 80:9 82:23 83:32 84:10 86:-12 88:-9 90:17 92:-13 94:-8 96:-15 98:-11 99:-13 100:-12 103:11 104:13 105:8 106:16 109:22 112:39 116:-11 117:15 123:-33
which _ for	5:29
for _ @job	0:-22 1:-12 2:-9 3:-18 4:35 6:19 7:-8 9:-8 11:12 13:26 16:59 17:23 18:13 20:-9 23:25 26:15 27:-30 29:-13 30:10 33:-14 35:-8 36:31 37:-14 42:10 46:-8 47:-14 63:-16 69:17 72:10 74:-9 77:18 82:22 83:35 90:12 91:11 104:20 105:18 107:-22 112:46 123:-13
what fit	0:30
what _ job	5:10 12:15 13:19
anyth==ing	0:83 1:-17 3:-9 8:-11 9:30 10:-14 11:104 13:33 16:-11 17:15 22:53 23:45 24:46 25:-11 26:37 29:-8 30:-9 31:-10 33:8 36:-8 37:-9 38:-12 39:11 42:-18 46:-9 56:14 57:12 76:-8 82:-18 83:53 90:16 95:-9 99:-8 106:-11 107:-13 113:15 121:-11 123:13
on==	0:11 1:38 2:-18 3:10 5:-11 6:-17 8:39 10:-29 11:12 12:16 13:-13 14:-34 15:9 16:15 17:19 18:-17 20:-25 21:-12 22:-32 23:-42 24:54 25:-21 27:27 28:23 29:47 30:-19 31:45 32:19 33:15 34:-8 36:-23 37:-21 39:-9 40:30 41:8 42:13 43:24 44:39 45:-16 46:21 47:-36 48:-13 49:-31 50:-23 51:41 52:48 53:54 54:29 55:-11 57:19 59:-15 60:-10 61:-34 63:-13 64:-10 65:13 66:26 69:-17 70:-26 71:-23 72:-20 75:-31 78:-9 79:-15 80:-33 81:23 82:-22 84:-19 85:-15 86:21 87:14 88:40 89:35 90:19 94:18 96:22 97:-14 99:-33 100:18 101:-36 102:16 103:-27 104:42 105:27 106:56 107:35 108:22 109:45 110:67 111:48 113:-19 114:39 115:35 117:31 118:-22 119:13 120:-22 121:-23 122:-27
anyth	0:83 1:-17 3:-9 8:-11 9:30 10:-14 11:104 13:33 16:-11 17:15 22:53 23:45 24:46 25:-11 26:37 29:-8 30:-9 31:-10 33:8 36:-8 37:-9 38:-12 39:11 42:-18 46:-9 56:14 57:12 76:-8 82:-18 83:53 90:16 95:-9 99:-8 106:-11 107:-13 113:15 121:-11 123:13
^ anyth	0:47 11:33 13:44 23:20 42:-8 123:-10
anyth for	23:-8 83:50
for slot	0:42 1:-22 3:67 4:-28 33:-8 36:66 41:44 43:11 73:-10 74:-15 77:20 90:-17 104:-8 123:-12
on	0:11 1:38 2:-18 3:10 5:-11 6:-17 8:39 10:-29 11:12 12:16 13:-13 14:-34 15:9 16:15 17:19 18:-17 20:-25 21:-12 22:-32 23:-42 24:54 25:-21 27:27 28:23 29:47 30:-19 31:45 32:19 33:15 34:-8 36:-23 37:-21 39:-9 40:30 41:8 42:13 43:24 44:39 45:-16 46:21 47:-36 48:-13 49:-31 50:-23 51:41 52:48 53:54 54:29 55:-11 57:19 59:-15 60:-10 61:-34 63:-13 64:-10 65:13 66:26 69:-17 70:-26 71:-23 72:-20 75:-31 78:-9 79:-15 80:-33 81:23 82:-22 84:-19 85:-15 86:21 87:14 88:40 89:35 90:19 94:18 96:22 97:-14 99:-33 100:18 101:-36 102:16 103:-27 104:42 105:27 106:56 107:35 108:22 109:45 110:67 111:48 113:-19 114:39 115:35 117:31 118:-22 119:13 120:-22 121:-23 122:-27
#n on	0:55 1:-10 3:35 4:39 11:-10 13:-17 15:-8 24:-10 27:-23 29:-12 33:9 35:48 36:-15 38:-10 40:31 41:11 42:-24 43:8 44:-37 63:-9 64:-8 72:10 76:12 77:10 80:-8 86:-9 88:20 90:42 91:-12 92:28 93:-18 94:9 95:22 96:24 104:15 106:-19 107:-18 109:-9 112:21 113:-12 114:20 123:13
on the	1:65 2:-15 5:-23 7:21 8:36 11:46 12:11 15:8 19:-11 20:-15 21:8 23:-13 24:16 25:-19 27:-8 28:-16 29:-21 30:-13 31:-29 32:-16 34:-20 35:14 37:-8 38:24 39:-14 40:42 42:25 43:28 44:44 46:11 47:-18 49:-15 52:-18 53:14 54:-16 56:-11 58:8 62:10 63:-20 65:16 66:44 67:13 68:-12 69:13 71:9 72:-10 74:9 75:-15 77:-20 80:-16 81:10 82:-10 83:-11 84:-8 86:29 87:13 88:46 89:35 92:-29 94:18 96:12 98:10 99:-22 100:26 101:-11 102:22 103:-8 104:-16 105:-11 106:13 107:15 109:-21 112:-9 113:-22 114:-13 115:13 116:-13 119:18 123:-43
for _ slot	0:-19 3:10 18:28 35:-14 36:23 69:17 81:10 90:-9
slot _ on	0:9 1:-11 3:8 4:15 13:-10 16:10 27:-9 33:16 42:64 71:19 106:-8
on _ @job	0:50 1:75 3:13 4:10 5:-10 6:-8 8:-8 12:-8 15:23 16:8 18:15 24:21 28:-10 29:-26 32:-8 35:17 36:-9 40:-20 41:20 42:53 43:29 44:-16 46:-19 73:-15 74:17 77:-14 81:16 86:19 87:-8 88:33 89:-13 90:37 92:16 94:12 96:24 102:-8 105:-9 106:17 110:-11 113:-15 114:-12 123:-12
is==	0:-16 1:9 2:-29 3:54 4:-9 5:-36 6:-32 7:-35 8:37 9:17 10:-19 11:10 13:44 14:25 15:75 16:-26 17:33 18:13 19:-25 20:-20 23:59 24:-16 25:58 26:31 27:23 28:61 29:28 30:28 31:48 33:-72 35:-25 36:-8 38:-26 39:27 40:11 41:-16 42:36 44:25 45:-10 47:28 48:-14 49:-30 50:36 51:-19 52:16 53:-16 54:58 55:-12 56:-13 57:-18 58:51 59:10 63:8 64:30 67:29 68:25 69:-47 71:-46 72:23 73:-38 75:26 76:30 77:10 78:-16 80:-16 81:-34 84:37 85:-16 86:57 87:17 88:39 89:12 90:52 91:20 92:38 93:22 94:-18 96:-15 99:-10 100:30 101:47 102:13 105:-14 107:-23 109:-10 110:-8 111:43 112:16 113:15 114:-23 115:-26 117:25 118:45 120:49 121:-14 122:-28 123:48
ther==e	0:79 3:-16 4:12 6:8 7:35 8:52 9:10 11:-11 12:-8 13:-24 14:35 15:-29 16:-16 17:12 18:-18 19:24 20:-11 21:11 22:28 23:-32 24:-10 26:18 27:-16 29:-18 31:-17 32:9 34:62 35:15 36:-8 37:-11 38:-8 39:-13 41:-9 42:-13 44:-11 47:-9 50:8 54:-10 64:-11 65:43 66:20 67:-13 69:-9 75:-8 76:-10 77:-13 79:-9 81:11 83:-8 86:9 89:27 90:16 92:38 93:8 95:-14 96:-12 97:34 98:79 99:21 101:-11 105:-10 106:-10 107:21 112:8 115:-8 116:-9 120:-9
an==	0:22 2:-9 11:-8 16:-9 25:9 31:22 34:20 37:17 38:17 42:-10 51:-8 69:17 75:12 90:-8 91:11 94:17 97:11 101:8 103:48 104:32 107:8 115:21 119:11 123:-10
that==	0:38 1:-14 3:23 9:-32 13:-16 14:18 15:-16 16:-8 17:-23 18:24 21:-11 23:-11 24:43 25:-8 26:-17 27:10 28:-22 29:-32 31:30 32:20 33:-26 34:-15 35:46 36:-26 37:-10 38:-10 40:-21 41:-10 42:18 44:-17 45:-8 46:-15 47:13 48:-17 49:13 51:-14 54:17 57:-14 58:45 59:-11 61:29 62:-17 64:-15 65:-10 66:12 67:-15 70:9 71:-8 77:-16 78:-10 80:-9 81:9 82:40 83:48 84:-12 85:13 86:24 87:-17 88:-23 89:-12 90:-10 91:-17 92:27 93:-11 94:-13 95:8 97:-10 98:13 99:10 104:-13 106:-10 107:9 108:-8 109:-14 110:-10 111:38 114:-9 115:-15 116:30 117:22 118:18 120:-10 122:88
)~"
R"~(is	0:-16 1:9 2:-29 3:54 4:-9 5:-36 6:-32 7:-35 8:37 9:17 10:-19 11:10 13:44 14:25 15:75 16:-26 17:33 18:13 19:-25 20:-20 23:59 24:-16 25:58 26:31 27:23 28:61 29:28 30:28 31:48 33:-72 35:-25 36:-8 38:-26 39:27 40:11 41:-16 42:36 44:25 45:-10 47:28 48:-14 49:-30 50:36 51:-19 52:16 53:-16 54:58 55:-12 56:-13 57:-18 58:51 59:10 63:8 64:30 67:29 68:25 69:-47 71:-46 72:23 73:-38 75:26 76:30 77:10 78:-16 80:-16 81:-34 84:37 85:-16 86:57 87:17 88:39 89:12 90:52 91:20 92:38 93:22 94:-18 96:-15 99:-10 100:30 101:47 102:13 105:-14 107:-23 109:-10 110:-8 111:43 112:16 113:15 114:-23 115:-26 117:25 118:45 120:49 121:-14 122:-28 123:48
^ is	0:31 1:26 2:-8 3:59 4:8 5:-8 6:8 9:43 11:35 12:-9 13:120 14:-29 15:68 16:42 17:111 18:56 19:-8 20:-9 21:26 22:33 23:112 25:113 26:86 27:-17 28:109 30:72 31:46 32:-11 34:29 35:-19 36:-15 37:-25 39:-27 40:-26 41:-14 42:-31 43:-19 44:-12 46:-11 47:-11 50:-24 52:-24 54:-24 58:-13 61:-8 62:-10 63:-21 64:-22 65:-9 67:-10 68:-13 73:-10 75:-9 76:-14 77:-8 82:-16 83:-14 84:-10 85:-16 86:-24 87:-15 88:-35 89:13 90:-32 91:12 92:-12 96:-9 98:-14 100:-25 101:-20 102:-16 104:-12 105:-17 106:-13 107:-14 109:-14 110:-17 111:-15 112:-28 113:-11 116:-9 117:-13 118:-10 120:-8 123:18
ther	0:79 3:-16 4:12 6:8 7:35 8:52 9:10 11:-11 12:-8 13:-24 14:35 15:-29 16:-16 17:12 18:-18 19:24 20:-11 21:11 22:28 23:-32 24:-10 26:18 27:-16 29:-18 31:-17 32:9 34:62 35:15 36:-8 37:-11 38:-8 39:-13 41:-9 42:-13 44:-11 47:-9 50:8 54:-10 64:-11 65:43 66:20 67:-13 69:-9 75:-8 76:-10 77:-13 79:-9 81:11 83:-8 86:9 89:27 90:16 92:38 93:8 95:-14 96:-12 97:34 98:79 99:21 101:-11 105:-10 106:-10 107:21 112:8 115:-8 116:-9 120:-9
is ther	0:105 3:-23 4:21 6:16 8:51 9:32 13:-27 14:60 15:-19 17:11 18:-9 22:35 23:-25 25:-32 26:31 27:-10 29:12 30:15 34:34 35:-10 90:-10 123:-14
an	0:22 2:-9 11:-8 16:-9 25:9 31:22 34:20 37:17 38:17 42:-10 51:-8 69:17 75:12 90:-8 91:11 94:17 97:11 101:8 103:48 104:32 107:8 115:21 119:11 123:-10
ther an	0:15
an offcut	0:28
that	0:38 1:-14 3:23 9:-32 13:-16 14:18 15:-16 16:-8 17:-23 18:24 21:-11 23:-11 24:43 25:-8 26:-17 27:10 28:-22 29:-32 31:30 32:20 33:-26 34:-15 35:46 36:-26 37:-10 38:-10 40:-21 41:-10 42:18 44:-17 45:-8 46:-15 47:13 48:-17 49:13 51:-14 54:17 57:-14 58:45 59:-11 61:29 62:-17 64:-15 65:-10 66:12 67:-15 70:9 71:-8 77:-16 78:-10 80:-9 81:9 82:40 83:48 84:-12 85:13 86:24 87:-17 88:-23 89:-12 90:-10 91:-17 92:27 93:-11 94:-13 95:8 97:-10 98:13 99:10 104:-13 106:-10 107:9 108:-8 109:-14 110:-10 111:38 114:-9 115:-15 116:30 117:22 118:18 120:-10 122:88
is _ an	0:15
ther _ offcut	0:15
that _ slot	74:9
someth==ing	0:60 4:-8 11:10 17:-8 18:8 25:9 33:20 37:9 48:10 71:-9 86:40 87:-10 98:10 123:-8
someth	0:60 4:-8 11:10 17:-8 18:8 25:9 33:20 37:9 48:10 71:-9 86:40 87:-10 98:10 123:-8
^ someth	0:34 86:40
in @job	18:50 86:9
someth _ slot	0:12
slot _ in	0:12 41:14 73:9 74:15
^ an	49:8
offcut for	0:24
in the	0:13 1:25 2:-10 3:23 4:-27 5:-20 6:-8 7:-8 8:64 11:17 13:-17 14:38 17:-14 18:24 19:-11 20:-8 21:-49 22:30 25:-22 26:18 27:-15 28:-17 30:-9 31:-9 32:-11 34:-14 36:-8 38:36 39:46 40:-12 41:-12 43:-11 44:-9 46:-12 47:-8 54:-18 55:8 57:-9 60:37 62:-10 68:16 69:-12 70:-13 71:32 74:37 76:-15 77:28 78:17 79:-12 80:33 82:14 86:8 89:-10 90:49 91:-14 92:-10 93:14 94:-16 95:19 97:9 100:14 101:-10 102:-10 104:14 106:-10 108:-8 109:20 117:-8 123:-17
an _ for	0:24
in _ @job	18:41 40:10 45:9 69:13 81:17
a==	0:20 1:41 2:15 3:20 4:-16 5:15 8:-33 9:-18 10:-15 11:-8 14:-17 15:-21 16:-19 17:-36 19:-19 21:-20 22:-18 23:-14 24:-20 26:14 27:52 28:-29 29:-18 30:40 31:-23 32:-15 33:-36 34:34 35:-45 36:-11 37:-23 38:22 40:-21 41:29 42:-31 43:-13 44:-16 46:-24 47:-24 48:49 49:18 50:21 51:25 52:46 53:-26 54:19 55:14 57:50 60:28 62:9 63:-21 64:15 65:-24 66:-45 67:26 68:11 69:-36 70:11 71:-20 73:31 74:-16 76:-25 77:31 78:32 80:-19 81:-8 83:-14 84:38 85:-20 86:9 87:-19 88:25 90:-34 91:20 92:-16 93:28 95:21 96:8 97:61 98:9 100:-16 101:-9 102:52 103:75 104:-9 105:-23 106:-23 107:49 108:-14 109:10 110:-18 111:14 112:42 114:-8 115:8 117:-9 118:-8 119:74 123:26
a	0:20 1:41 2:15 3:20 4:-16 5:15 8:-33 9:-18 10:-15 11:-8 14:-17 15:-21 16:-19 17:-36 19:-19 21:-20 22:-18 23:-14 24:-20 26:14 27:52 28:-29 29:-18 30:40 31:-23 32:-15 33:-36 34:34 35:-45 36:-11 37:-23 38:22 40:-21 41:29 42:-31 43:-13 44:-16 46:-24 47:-24 48:49 49:18 50:21 51:25 52:46 53:-26 54:19 55:14 57:50 60:28 62:9 63:-21 64:15 65:-24 66:-45 67:26 68:11 69:-36 70:11 71:-20 73:31 74:-16 76:-25 77:31 78:32 80:-19 81:-8 83:-14 84:38 85:-20 86:9 87:-19 88:25 90:-34 91:20 92:-16 93:28 95:21 96:8 97:61 98:9 100:-16 101:-9 102:52 103:75 104:-9 105:-23 106:-23 107:49 108:-14 109:10 110:-18 111:14 112:42 114:-8 115:8 117:-9 118:-8 119:74 123:26
ther a	0:16 1:15 3:-15 4:23 8:8 13:-8 26:27 34:42
a piec	0:50 67:14
is _ a	0:13 1:15 4:23 13:-10 14:-11 17:-10 26:26 34:42 35:-8 48:8 50:21 62:9 64:-8 65:9 76:9 82:8 95:10 111:13 123:-23
ther _ piec	0:10
someth for	0:68 71:-9
for _ fret	0:10 3:11 27:25 30:-9 36:12 91:-9 103:35
a _ for	0:33 1:19 2:13 3:15 4:-10 26:28 36:-10 77:15 79:-10 102:8 103:9
for _ #r	3:10 35:9 70:16
find==	0:26 34:17 76:53 90:39 123:-17
me==	0:37 1:-20 2:-11 3:22 4:40 6:22 7:16 8:55 10:34 13:42 15:-11 16:40 17:23 18:-13 21:-9 22:-12 24:-10 25:-8 27:-16 28:31 29:42 30:-13 31:-9 32:-10 33:18 34:49 35:-17 36:21 37:-18 38:17 39:-13 40:-8 42:-9 43:-15 46:-11 47:-10 49:-8 50:41 51:-9 52:-21 61:-10 62:-9 63:24 64:-10 66:-10 69:23 70:-10 71:-16 74:-14 76:-10 80:9 81:-16 82:-18 83:-14 86:-13 88:9 89:-8 90:-12 92:-9 94:-8 96:-8 97:-11 98:-10 99:-8 102:-11 103:-9 104:55 105:-15 108:-10 109:66 111:-9 113:-10 116:-9 117:-8 122:30 123:36
find	0:26 34:17 76:53 90:39 123:-17
^ find	0:30 1:9
me	0:37 1:-20 2:-11 3:22 4:40 6:22 7:16 8:55 10:34 13:42 15:-11 16:40 17:23 18:-13 21:-9 22:-12 24:-10 25:-8 27:-16 28:31 29:42 30:-13 31:-9 32:-10 33:18 34:49 35:-17 36:21 37:-18 38:17 39:-13 40:-8 42:-9 43:-15 46:-11 47:-10 49:-8 50:41 51:-9 52:-21 61:-10 62:-9 63:24 64:-10 66:-10 69:23 70:-10 71:-16 74:-14 76:-10 80:9 81:-16 82:-18 83:-14 86:-13 88:9 89:-8 90:-12 92:-9 94:-8 96:-8 97:-11 98:-10 99:-8 102:-11 103:-9 104:55 105:-15 108:-10 109:66 111:-9 113:-10 116:-9 117:-8 122:30 123:36
find me	0:29
me a	0:21 1:-12 13:14 34:-9 123:49
of job	1:-22 3:46 4:33 5:-26 11:11 12:-9 15:-17 16:22 17:31 18:12 23:-16 24:8 29:14 30:-14 37:-11 38:-8 39:-8 40:26 41:-10 42:10 43:14 44:45 45:-15 47:-14 49:-10 63:-11 64:-26 65:-8 69:34 70:45 71:29 72:-16 74:20 76:9 77:21 78:-9 79:-17 80:-21 83:19 86:39 87:-8 88:18 90:22 91:9 92:13 93:14 95:11 96:16 98:-8 103:-8 104:-10 106:21 107:24 112:-12 114:17 116:-10 123:38
find _ a	0:11
me _ piec	0:14
of _ #n	0:-15 1:-9 3:47 4:21 5:-18 12:-9 15:-15 16:30 17:30 18:9 20:-8 22:-8 23:-17 29:12 30:-17 33:9 37:-8 38:-8 40:13 41:-20 43:17 44:33 45:-15 47:-20 63:-12 64:-26 65:-10 67:-9 69:11 70:30 71:31 74:21 76:14 77:34 78:-15 79:-17 80:26 83:16 86:28 87:-10 88:23 89:27 90:23 92:10 93:18 94:12 96:22 97:9 98:-12 100:-8 103:-10 104:-11 106:23 107:21 112:-14 113:25 114:17 115:-9 117:28 119:-8 120:-10 123:39
of the	0:34 1:-10 2:42 3:24 4:-10 7:15 9:-26 11:-18 12:12 15:-17 17:9 18:-16 22:14 25:11 27:33 28:-14 29:-8 30:-20 31:-16 33:15 34:-8 38:30 39:-32 40:14 43:-23 44:-12 46:-19 47:-11 49:36 52:23 54:15 59:-9 60:-11 63:-12 64:-8 65:33 66:-13 67:25 72:18 74:-8 77:11 78:-11 79:21 80:44 81:20 82:8 83:-13 84:24 85:-19 86:16 89:15 90:18 91:11 93:13 94:22 95:14 97:-23 98:10 100:-8 101:-8 102:-9 104:-9 105:18 106:-27 107:28 109:-10 110:-11 112:-18 114:14 115:33 117:-9 118:-11 120:-12 121:-10
fret _ of	2:-14 3:19 4:20 13:-17 16:11 27:-23 33:27 35:37 40:29 41:12 42:-11 43:-15 44:13 45:-16 69:-25 70:38 71:23 74:61 77:-36 79:-11 88:33 94:21 95:28 106:-11 114:-8 123:30
of _ @job	0:11 1:-11 2:17 3:46 6:13 13:18 15:14 17:12 23:-8 27:57 30:9 33:-12 35:15 38:-8 40:26 43:-14 46:-20 47:-14 69:-21 70:30 71:13 73:19 74:8 76:12 77:18 79:-9 80:-9 81:-21 87:-10 88:-11 89:21 90:26 91:12 92:14 93:14 94:17 95:14 96:14 106:-16 107:32 112:-12 113:-13 114:12 123:-11
make==s	0:46 1:-8 29:8 37:8 64:17 67:16 109:18
what offcut	0:22 5:9
make	0:77 2:10 3:-15 7:16 16:-9 28:-8 33:-18 35:16 38:-8 39:-9 40:-9 41:-8 46:-8 49:-9 54:28 57:11 60:66 64:10 67:23 68:22 69:8 77:41 81:-8 98:33 103:39 109:13 114:11 120:-9
)~"
R"~(offcut make	0:21
make #d	0:38
what _ make	0:14
offcut _ #d	0:25
in $	0:18 1:-9 3:-17 7:26 8:-10 9:-8 19:23 20:8 23:-9 26:-8 28:47 29:-9 31:-11 35:55 41:23 49:8 50:33 52:32 54:-8 57:13 58:-8 61:23 62:21 65:-9 67:-10 74:-10 77:13 78:8 79:17 81:-10 86:19 90:-8 94:9 109:-8 110:-10 123:-15
mm of	0:14 1:-9 24:12 38:41 65:39 66:-10 67:42
of @wire	1:63 2:-9 3:-27 4:-12 6:-16 7:-12 8:24 9:32 11:-11 12:-12 13:-11 16:-11 17:-11 18:-15 19:28 20:25 22:13 23:47 24:9 25:-16 26:-9 27:-13 28:-8 29:-11 30:-12 31:27 32:-28 34:-16 35:11 36:32 37:53 38:35 39:39 40:-11 41:-20 43:-12 45:-10 48:-14 49:56 54:-12 59:-8 65:84 66:28 67:62 68:10 70:-12 71:-9 73:-14 77:-10 78:31 79:27 80:-15 82:-11 86:-11 87:44 88:-9 89:-8 90:-10 91:-8 97:-12 98:-11 100:-9 107:-8 115:75 116:-9 119:-12 120:-11 123:72
piec _ #n	0:32 3:-20 23:10 37:8 69:19
#n _ of	1:-12 2:-8 3:-8 4:15 5:13 8:-15 9:-10 16:-14 20:-10 22:-23 31:26 35:27 38:40 40:-14 41:11 44:-11 47:12 49:25 50:14 65:32 67:65 68:11 69:9 70:11 71:15 74:-13 77:-27 78:14 79:-8 81:15 86:17 87:-13 88:-10 89:-9 91:17 96:-11 100:10 115:32 119:-26 120:20 123:30
mm _ @wire	0:39 1:-11 8:-15 38:17 49:-9 65:19 67:25 80:12 87:-9
@wire $	0:39 1:52 3:-15 4:-11 5:-22 6:116 7:48 8:96 9:63 10:-9 11:-13 12:-23 13:-12 14:-19 15:-10 16:-8 17:-14 19:56 20:8 21:15 22:48 24:11 25:-14 26:-11 27:-13 28:-11 29:-14 30:-8 32:59 34:-15 35:24 36:-11 37:54 39:38 40:-8 45:26 49:22 50:-15 65:45 66:-23 67:17 68:-21 69:20 70:-8 73:-9 77:-8 81:-18 87:-29 90:-9 98:-8 107:-9 115:60 116:-28 117:-19 122:-9 123:24
which _ #d	0:33
#d $	0:13 1:44 3:-20 8:-8 9:-11 14:-18 15:-8 17:-14 23:14 26:-9 29:-10 30:-8 32:-12 33:8 34:-8 35:22 37:27 38:73 39:49 40:96 41:63 43:-8 44:-8 48:-13 49:23 50:24 65:-13 67:-14 68:8 69:19 73:8 74:22 75:17 76:-15 77:21 78:-18 79:31 80:-27 81:-14 84:15 87:32 88:-9 90:-11 91:29 94:-13 96:-11 99:-8 116:10
fit #d	0:27 1:-8
#d of	1:42 3:-12 8:-21 9:-11 19:-11 20:-12 22:-12 23:27 33:30 35:26 36:40 37:40 38:17 39:57 45:-8 50:-8 65:26 69:21 78:-8 80:-12 81:-17 87:-17
piec _ #d	0:26 3:-13 69:18
#d _ @wire	0:10 1:33 3:-14 8:-17 9:-10 19:-10 20:-11 22:-10 23:30 33:30 35:23 36:40 37:40 39:50 45:-11 50:-8 69:21 78:-8 80:21 81:-20 87:-16
make #n	0:19 67:25
which _ make	0:16
make _ mm	0:16 67:14
mm $	1:-9 2:-15 3:-37 5:9 6:-8 7:23 16:-8 38:-9 39:-9 40:27 41:47 44:-8 48:13 49:20 50:69 54:67 65:-15 66:8 67:-10 68:9 75:18 76:-8 77:33 79:31 80:-14 84:8 86:48 87:17 90:-8 116:14 123:-12
in of	0:10 38:26 67:20
#d _ of	0:44 1:13 8:-20 9:-8 22:-12 37:8 38:52 65:51 67:21 68:-9 78:-10 79:14 80:-9 81:25
of _ @wire	0:10 1:8 3:-8 8:-18 19:19 20:23 21:8 22:9 23:18 24:9 31:-10 32:13 38:47 49:50 65:29 67:30 69:-14 78:28 79:12 80:-11 81:31 87:16 95:-10 115:36 118:-10 123:26
for #d	0:47 1:-8 49:16 115:11
for _ mm	0:13 24:13
for _ of	16:9 28:8 64:13 114:20
ther for	0:35
for #n	0:62 1:15 3:-8 4:-9 17:-9 22:54 23:-14 27:18 29:17 34:12 36:-11 46:12 49:9 65:-12 69:-14 71:-10 74:-9 81:29 98:-8 103:18 104:26 111:17 115:30 123:-12
is _ for	0:29 3:-14 8:-17 12:31 13:-30 15:14 16:-17 17:-9 18:-8 21:8 23:-34 26:29 27:15 29:10 30:-8 31:-8 37:15 46:23 54:15 64:24 76:12 82:20 83:54 84:14 85:15 90:-8 107:15 123:9
ther _ #n	65:24 66:26 81:14 84:9 95:-9 97:34 98:51 123:-10
for _ in	0:18 9:18
ther _ #d	0:28 65:12
can==	0:18 1:34 2:69 3:36 4:-15 5:17 8:-24 9:-15 11:-23 12:-14 13:-26 14:-9 16:19 17:20 19:-11 21:-10 22:16 26:-18 27:-12 28:-13 29:13 30:85 31:-16 32:31 33:-30 34:86 35:-15 36:13 39:-21 40:-10 42:21 43:-15 44:-9 46:-11 47:-13 49:-8 63:-10 64:25 65:-9 66:-8 68:-8 72:-8 76:22 77:-14 79:-12 80:32 81:-10 82:-9 83:-10 85:15 88:-11 89:31 90:18 91:-8 92:-9 94:-10 95:-8 96:-12 100:43 101:44 102:-9 104:-14 105:38 106:-15 109:14 111:-8 112:58 113:-29 114:-8 115:-8 116:-12 117:-10 118:30 119:40 122:-19 123:-14
take==	0:23 1:20 2:-10 3:-9 5:11 6:40 8:-23 9:-19 11:-20 12:-8 13:-17 14:-8 15:-10 18:-10 19:-9 21:-11 22:-10 23:22 24:-19 25:-13 27:54 29:-23 30:23 31:-9 32:36 33:-16 34:-10 35:72 36:-17 37:13 38:-9 39:-22 42:-8 46:14 47:9 52:-19 54:-8 56:30 58:-20 59:62 62:13 63:-16 64:75 68:-8 70:-15 76:-8 77:-10 80:9 81:15 85:20 86:-14 90:-8 98:-8 99:40 102:-10 103:-12 106:-12 109:20 110:-13 111:22 112:-12 113:-9 115:-8 116:-8 121:28 122:78 123:16
can	0:18 1:34 2:69 3:36 4:-15 5:17 8:-24 9:-15 11:-23 12:-14 13:-26 14:-9 16:19 17:20 19:-11 21:-10 22:16 26:-18 27:-12 28:-13 29:13 30:85 31:-16 32:31 33:-30 34:86 35:-15 36:13 39:-21 40:-10 42:21 43:-15 44:-9 46:-11 47:-13 49:-8 63:-10 64:25 65:-9 66:-8 68:-8 72:-8 76:22 77:-14 79:-12 80:32 81:-10 82:-9 83:-10 85:15 88:-11 89:31 90:18 91:-8 92:-9 94:-10 95:-8 96:-12 100:43 101:44 102:-9 104:-14 105:38 106:-15 109:14 111:-8 112:58 113:-29 114:-8 115:-8 116:-12 117:-10 118:30 119:40 122:-19 123:-14
fret can	0:23 2:13
can i	0:31 1:29 2:12 3:-11 16:32 17:13 18:9 22:17 29:12 30:31 32:9 34:13 122:-25 123:40
take	0:12 1:36 2:-15 3:-10 6:35 7:-8 8:-25 9:-22 10:-10 11:-23 12:-11 13:-26 14:-10 15:-13 18:-13 19:-12 20:-9 21:-13 22:-13 23:17 24:-21 25:-16 26:-10 27:46 28:-10 29:-30 30:19 31:-12 32:28 33:-32 35:66 36:-22 37:19 38:-11 39:-24 42:-18 43:-11 44:-9 46:10 52:-21 54:-14 56:27 57:-9 58:-22 59:57 61:-10 62:9 63:36 64:59 68:-10 70:-17 72:32 73:-10 76:-10 77:-12 80:8 81:13 82:59 83:-11 84:-8 85:18 86:-17 88:-10 90:-11 92:-9 94:-9 95:-8 96:-11 97:-12 98:30 99:36 102:12 103:126 105:-8 106:-19 109:26 110:-16 111:21 112:-18 113:-14 115:-10 116:-10 117:-9 120:66 121:25 122:74
i take	0:49 104:9 109:8
take in	0:8 34:17
short _ can	0:24 123:-10
can _ take	0:28 1:-16 23:13 108:10 122:12
take _ slot	0:15
use for	0:8 1:40 5:17 22:-9 82:13
can _ use	0:12 1:25 5:22 18:10 29:8 100:39 109:-11 123:-16
i _ for	0:41 1:-18 2:9 3:9 5:16 6:29 17:-9 27:-16 30:24 76:10 107:19 123:-12
take on	30:30
do _ take	0:10 6:12 27:-8 32:17
i _ on	1:-16 2:12 9:22 10:-8 16:25 17:-18 28:25 29:12 39:14 82:11 94:19 96:-8 106:47 107:-11 109:-8 110:9 123:-8
on _ #r	88:11 104:12
one==	3:49 30:9 37:27 40:-8 41:-20 77:12 122:12
should==	0:-14 4:24 5:36 6:20 8:-19 9:42 10:21 13:-12 16:-14 17:34 18:28 19:-9 20:-8 22:65 23:-10 29:14 31:-21 33:-14 34:-12 37:-10 39:-26 42:-12 50:-8 54:22 64:8 65:-12 68:35 85:-12 97:15 100:-9 103:13 105:22 114:-20 117:11 122:15 123:82
one	0:30 1:-11 2:18 3:43 4:-9 5:-8 9:-13 12:38 14:16 16:-11 17:33 22:65 31:47 32:-8 35:-10 37:22 39:-27 40:-12 41:-24 42:-8 44:-25 49:10 69:-11 70:13 71:-12 74:74 80:44 81:45 88:-27 90:-9 92:-10 96:-15 111:-8 122:10 123:-8
which one	12:42 22:20 123:-12
should	0:-14 4:24 5:36 6:20 8:-19 9:42 10:21 13:-12 16:-14 17:34 18:28 19:-9 20:-8 22:65 23:-10 29:14 31:-21 33:-14 34:-12 37:-10 39:-26 42:-12 50:-8 54:22 64:8 65:-12 68:35 85:-12 97:15 100:-9 103:13 105:22 114:-20 117:11 122:15 123:82
should i	5:43 9:34 17:34 22:43 29:24 31:-11 33:-11 39:-20 123:-15
take for	0:42 1:-12 82:16
#r of	0:-10 4:9 13:-14 16:33 17:-10 27:-13 40:18 41:11 42:-16 43:-9 44:21 69:-8 70:43 76:16 77:12 79:-10 86:-11 88:45 89:17 91:9 94:17 95:10 106:-10 123:24
which _ should	10:11
one _ i	22:23 123:-12
should _ take	27:9
could==	0:31 1:94 3:31 5:21 7:8 8:-8 11:-14 13:15 15:48 16:-14 17:-17 18:29 22:38 23:-9 26:11 27:-15 28:-8 30:106 33:-18 35:-29 36:-8 37:-10 38:-16 39:-10 42:-9 58:-12 59:9 63:-14 73:-9 76:-8 90:33 94:-9 103:-12 123:45
we==	0:29 1:-11 2:25 3:-16 4:-28 5:36 6:25 7:12 8:68 9:57 10:20 11:31 13:8 15:-15 16:19 19:27 20:-10 21:26 22:8 23:38 24:-19 25:20 26:-35 27:-29 28:38 29:31 30:36 31:32 32:25 33:-37 34:-9 35:-22 36:-21 37:-22 38:-25 40:-8 41:-14 42:-22 43:-11 44:-22 45:-14 50:23 51:26 52:26 53:31 54:-20 56:9 58:-9 59:-13 60:-14 62:10 63:-16 64:-19 65:24 66:-22 69:-18 70:23 71:-18 72:-11 73:-11 74:-13 75:-10 76:16 77:-11 78:-14 79:-8 80:-23 81:10 82:-34 85:17 86:-14 87:-13 88:-19 89:-12 90:-21 91:-11 92:-14 93:-9 96:-25 98:25 99:42 100:-10 101:11 102:-9 104:25 105:15 106:45 107:27 109:-24 110:-23 111:59 112:-22 113:-12 114:20 116:-12 117:-11 119:52 121:48 122:-15 123:34
could	0:31 1:94 3:31 5:21 7:8 8:-8 11:-14 13:15 15:48 16:-14 17:-17 18:29 22:38 23:-9 26:11 27:-15 28:-8 30:106 33:-18 35:-29 36:-8 37:-10 38:-16 39:-10 42:-9 58:-12 59:9 63:-14 73:-9 76:-8 90:33 94:-9 103:-12 123:45
)~"
R"~(what could	0:28 1:12
we	0:29 1:-11 2:25 3:-16 4:-28 5:36 6:25 7:12 8:68 9:57 10:20 11:31 13:8 15:-15 16:19 19:27 20:-10 21:26 22:8 23:38 24:-19 25:20 26:-35 27:-29 28:38 29:31 30:36 31:32 32:25 33:-37 34:-9 35:-22 36:-21 37:-22 38:-25 40:-8 41:-14 42:-22 43:-11 44:-22 45:-14 50:23 51:26 52:26 53:31 54:-20 56:9 58:-9 59:-13 60:-14 62:10 63:-16 64:-19 65:24 66:-22 69:-18 70:23 71:-18 72:-11 73:-11 74:-13 75:-10 76:16 77:-11 78:-14 79:-8 80:-23 81:10 82:-34 85:17 86:-14 87:-13 88:-19 89:-12 90:-21 91:-11 92:-14 93:-9 96:-25 98:25 99:42 100:-10 101:11 102:-9 104:25 105:15 106:45 107:27 109:-24 110:-23 111:59 112:-22 113:-12 114:20 116:-12 117:-11 119:52 121:48 122:-15 123:34
could we	5:19 22:16 30:31
what _ we	0:20 1:-12 6:8 8:63 9:-13 10:37 11:-26 12:17 13:13 17:20 18:15 20:22 23:47 25:20 28:-10 29:-8 30:-16 31:8 32:-15 33:-29 34:23 123:-14
could _ take	0:13 1:29 30:21 35:-10
we _ in	0:14 8:47 49:9 95:10 98:-10 103:30
what _ can	30:9 34:12
for _ the	0:-8 3:9 5:29 9:-11 16:-8 27:16 35:8 40:9 102:13 103:10
#o $	12:15 13:-22 16:17 28:25 29:35 35:37 46:29 52:-8 74:20 75:16 76:-9 88:31 105:10 109:-11 111:57 116:-8 117:15 123:-12
should we	5:-9 6:22 8:-12 9:26 10:24 17:9 22:8 123:-10
we use	5:29 9:9 20:16 25:9
what _ should	6:8 10:14
offcut _ we	5:13
we _ for	4:-10 5:-8 6:37 8:23 9:-26 11:53 13:-10 16:-8 19:25 27:-13 28:29 105:14 107:15 123:-8
can we	2:20 5:34 8:-13 9:12 16:9 22:9 30:34 34:26
would==	0:53 1:65 4:-9 5:63 8:-8 9:15 10:17 11:-9 13:14 16:19 18:31 19:24 21:-11 22:-14 23:-11 25:15 26:19 29:-10 30:47 33:-15 35:-17 37:14 38:-8 40:-10 43:-14 46:-9 48:8 52:-13 53:-8 54:13 63:-8 77:-9 84:10 94:-12 102:-8 111:14 112:8
work==	1:-10 2:9 4:-9 5:14 8:-16 9:-11 11:-13 12:17 16:-17 17:-14 24:-11 26:-10 27:64 28:82 29:54 33:-14 34:42 37:-16 42:-12 44:-10 45:9 46:-8 51:-8 52:53 61:27 63:11 64:38 79:-11 102:-10 104:-12 106:47 107:47 109:19 110:39 123:-35
would	0:53 1:65 4:-9 5:63 8:-8 9:15 10:17 11:-9 13:14 16:19 18:31 19:24 21:-11 22:-14 23:-11 25:15 26:19 29:-10 30:47 33:-15 35:-17 37:14 38:-8 40:-10 43:-14 46:-9 48:8 52:-13 53:-8 54:13 63:-8 77:-9 84:10 94:-12 102:-8 111:14 112:8
offcut would	0:10 5:10
work	1:-14 4:-11 5:12 8:-23 11:-24 12:11 13:-9 14:39 15:-19 16:-29 17:-19 21:-8 22:-8 24:-14 25:67 26:-22 27:60 28:109 29:51 30:-9 31:-9 32:-18 33:-9 34:34 37:-21 42:-16 43:-14 44:-15 45:8 46:-12 51:-8 52:36 54:-14 57:46 60:23 62:38 64:35 76:-8 79:-12 86:-8 88:-12 94:-8 98:-12 100:-10 101:53 102:-16 103:-8 104:-20 105:-11 106:38 107:73 108:97 110:102 114:-10 116:-8 117:-12 119:-10 122:-8 123:-52
would work	5:19
what _ would	0:18 9:18
would _ slot	0:16
the==	0:15 1:-44 2:11 4:41 5:47 6:-43 7:41 8:37 9:16 10:16 11:10 12:49 13:50 14:27 15:-15 16:23 17:37 18:29 19:22 20:31 21:9 23:-28 25:14 26:27 27:15 28:11 30:8 31:-12 33:-8 34:35 35:14 36:-25 37:40 38:-28 40:18 42:23 43:33 44:-20 45:-28 46:-21 47:33 48:-20 49:-45 50:-14 51:-8 52:8 54:34 56:47 57:-11 59:31 60:17 61:-10 62:23 63:17 64:-11 65:-27 66:37 67:-34 68:24 71:12 73:46 75:32 76:17 78:-17 79:13 80:42 82:9 83:25 84:15 85:42 86:8 87:41 90:-41 92:29 93:-19 94:-34 95:-10 96:-35 97:23 98:20 99:66 101:29 102:79 103:35 104:-23 105:19 106:19 107:10 108:-19 110:-20 111:-8 113:13 115:-50 116:33 118:41 120:24 121:35 122:-15 123:85
tin==	0:90 1:15 2:61 3:-13 4:-25 5:91 6:-9 7:33 8:75 9:-19 10:-12 11:-13 12:-10 13:-21 14:-11 16:-21 17:-18 18:-17 19:-17 20:-20 21:101 22:144 25:-12 26:-11 27:-16 28:-8 29:-17 30:-10 31:-8 32:-8 33:14 34:-10 35:-23 37:12 38:120 40:-8 42:-12 43:-14 44:-8 49:-17 56:-8 65:-14 67:-9 68:-11 69:-18 71:70 74:34 76:-9 77:24 78:79 79:-26 80:13 81:8 86:-8 87:-8 88:-11 90:-12 91:-11 92:-12 94:-8 96:-8 97:-8 99:-9 102:-10 108:-11 116:-9
offcut in	0:13
tin	0:90 1:15 2:61 3:-20 4:-25 5:91 6:-9 7:33 8:75 9:-19 10:-12 11:-13 12:-10 13:-21 14:-11 16:-21 17:-18 18:-17 19:-17 20:-20 21:101 22:144 25:-12 26:-11 27:-16 28:-8 29:-17 30:-10 31:-8 32:-8 33:14 34:-10 35:-23 37:12 38:120 40:-12 42:-12 43:-14 44:-8 49:-17 56:-8 65:-14 67:-9 68:-11 69:-18 71:70 74:34 76:-9 77:41 78:79 79:-26 80:13 86:-8 87:-8 88:-11 90:-12 91:-13 92:-13 94:-8 96:-8 97:-8 99:-9 102:-10 108:-11 116:-9
the tin	0:37 1:27 2:22 3:-12 4:-23 5:73 7:23 8:63 9:-14 10:-10 11:-10 13:-10 14:-8 16:-16 17:-12 18:-10 19:-8 20:-14 21:100 22:80 25:-10 26:-9 27:-11 29:-14 30:-9 33:22 35:-21 37:17 38:88 43:-11 49:-11 54:-10 68:-8 69:-14 71:67 74:33 77:28 78:52 79:-25 80:11 81:-10 88:-10 90:-10 91:-9 92:-8 99:-8 102:-9 108:-10
would fit	5:13
what _ in	8:48 12:34 22:-14
in _ tin	0:27 1:37 3:-9 5:-11 7:8 8:16 21:-26 22:40 23:12 33:10 35:-14 38:42 71:30 74:34 77:13 78:28 79:-10 123:11
piec would	0:17
would do	0:30 3:-8 5:30
do slot	0:21 4:19
which _ would	1:11 5:20
do _ the	0:13 3:17 4:13
fit in	5:13
would _ in	0:10 5:25
in _ slot	0:-18 1:8 3:23 4:-19 40:18 69:-16 74:16 90:70 94:9
do _ #n	0:9 4:16 5:8 6:14 13:-8 15:46 17:10 31:35 33:-12 49:-15 63:31 112:17 113:14 123:-15
offcut==s	5:23 38:10
#r on	18:-9 43:12 74:12 81:42 90:41 94:18
on @job	0:22 1:-8 2:10 4:16 5:14 11:-19 13:26 15:-23 17:36 24:21 27:-11 28:-10 33:29 35:14 40:11 44:17 46:9 72:14 73:25 74:8 75:8 77:16 81:-10 91:18 92:40 94:27 95:8 96:16 106:-11 107:-15 112:-11 113:-9 123:-26
offcut _ do	5:10
do for	3:25 4:-9 5:21 13:41 17:-8 29:-11 34:10
would _ for	0:16 3:-8 5:34 9:8
do _ slot	3:38 17:14 40:-8 123:-11
and _ of	0:-12 4:27 5:-9 19:-9 20:32 21:-20 25:12 35:-20 43:16 44:-32 49:-14 65:47 69:27 70:44 74:-25 76:22 77:29 80:-20 88:32 89:-9 90:25 94:-20 95:-10 114:11 115:43
the _ in	0:-20 1:8 2:8 3:15 7:13 16:-12 18:13 22:-9 25:20 26:21 27:9 33:14 38:16 39:-15 40:11 69:-9 76:18 77:-9 80:34 90:-8 123:34
#o _ job	4:30 17:-8 69:22 74:13 75:-12 76:9 77:15 90:26 91:11 94:20 96:20
the fret	0:-14 2:72 4:35 5:-11 13:-25 15:-8 18:-8 24:8 27:-27 33:40 35:-11 40:25 42:42 44:-18 70:18 71:-9 74:38 76:26 82:8 88:-8 89:24 90:-13 92:-24 94:11 95:10 102:18 106:17 107:21 123:-22
fret fret	74:21 77:11 90:13 92:-8 96:13
on job	0:37 1:50 2:17 11:-15 13:-48 15:25 17:31 23:-10 24:32 27:19 28:-9 30:-11 33:21 36:-8 38:-10 42:57 43:31 44:21 46:-16 47:-13 63:20 64:-18 69:-13 71:-22 72:-10 73:-8 74:27 75:-15 76:27 77:13 83:26 86:9 88:-23 89:-12 90:48 93:23 94:8 95:-10 96:-16 104:-14 107:53 110:-13 112:-21 114:-11 123:-8
the _ fret	0:12 2:-20 4:45 13:-8 17:-20 27:-16 36:9 40:17 41:9 43:-8 44:33 45:9 69:-12 71:47 74:-13 76:-13 87:-10 90:22 92:-10 95:27 103:11 106:22 123:17
fret _ #n	0:8 1:-12 2:-14 3:-15 4:-12 13:-13 16:9 27:-8 33:-13 35:-14 41:11 42:14 44:17 45:8 69:-21 71:8 72:13 74:30 77:25 81:19 89:14 90:10 91:9 92:43 94:21 95:18 96:10 106:13 123:-8
fret _ on	16:32 17:26 27:-10 33:-8 35:34 40:29 41:17 44:-8 71:-8 76:-19 90:14 92:-16 94:10 95:9 96:8
on _ #n	0:17 1:33 2:13 4:16 6:-8 11:-16 12:-8 13:-8 15:23 16:38 17:47 23:-12 24:38 27:15 28:-11 29:-11 30:-13 33:10 35:-12 36:-8 37:12 38:-11 40:29 42:52 43:27 44:20 46:-17 47:-15 51:9 52:-10 53:-24 63:18 64:38 70:-11 71:-23 73:8 74:18 75:-22 76:20 77:11 80:-10 81:41 83:24 86:33 88:-20 89:-15 93:22 95:-14 96:-18 98:-9 100:-13 104:-19 105:-8 106:-20 107:49 110:-22 112:-22 114:-13 123:-16
anyth in	0:21 22:9
tin for	0:27 5:19 37:31
for fret	0:14 3:-10 12:36 16:20 35:36 40:15 76:-9 77:-8 81:11 90:11 106:12
fret #r	16:14 27:-8 40:9 41:17 42:-8 43:9 44:15 70:26 76:26 79:-10 94:22 96:21 123:-12
anyth _ the	0:21 28:8
the _ for	1:-14 2:-15 3:-28 4:-22 5:20 6:62 8:-15 9:-8 10:-9 11:9 13:126 16:8 17:-16 19:-15 20:13 23:-18 28:-8 29:-21 34:27 35:-14 36:-29 37:18 38:-11 41:50 42:29 43:-14 44:-8 46:16 47:-10 48:8 54:-13 59:39 63:9 64:-8 68:11 69:9 70:15 72:19 74:-15 76:11 81:17 82:-17 83:-20 90:11 99:-14 100:-13 102:-9 103:16 105:26 106:14 107:18 112:-20 113:-10 114:13 117:-8 119:12 123:22
a _ in	34:45 89:8 93:8 114:12
have==	0:27 1:11 2:-18 5:-29 8:39 10:19 11:32 12:46 14:51 16:-38 17:-34 18:-12 19:23 20:-15 21:32 22:12 23:29 25:30 26:60 27:-11 28:-28 29:16 30:18 31:54 33:25 34:-36 35:-11 36:-9 37:30 38:-12 39:-14 40:-11 41:-9 44:14 45:-14 46:-9 47:-8 49:-9 50:10 51:-10 52:-14 53:-12 56:-12 57:-12 60:-9 61:-11 63:-13 65:32 66:-8 67:-11 68:-11 69:-14 70:19 73:13 74:-12 76:-18 78:-25 80:24 81:-8 82:-14 83:-12 85:8 86:-12 87:-17 88:-14 89:20 91:-10 92:-11 93:-9 96:-13 97:19 98:41 99:67 101:-13 103:-13 104:16 105:-18 110:-10 111:-10 112:-12 114:21 117:-8 118:14 120:11 121:-8 123:41
)~"
R"~(have	0:27 1:11 2:-18 5:-29 8:39 10:19 11:32 12:46 14:51 16:-38 17:-34 18:-12 19:23 20:-15 21:32 22:12 23:29 25:30 26:60 27:-11 28:-28 29:16 30:18 31:54 33:25 34:-36 35:-11 36:-9 37:30 38:-12 39:-14 40:-11 41:-9 44:14 45:-14 46:-9 47:-8 49:-9 50:10 51:-10 52:-14 53:-12 56:-12 57:-12 60:-9 61:-11 63:-13 65:32 66:-8 67:-11 68:-11 69:-14 70:19 73:13 74:-12 76:-18 78:-25 80:24 81:-8 82:-14 83:-12 85:8 86:-12 87:-17 88:-14 89:20 91:-10 92:-11 93:-9 96:-13 97:19 98:41 99:67 101:-13 103:-13 104:16 105:-18 110:-10 111:-10 112:-12 114:21 117:-8 118:14 120:11 121:-8 123:41
^ have	10:12 11:-12 23:22 31:69 62:10 93:-13 107:19 114:9
have we	0:24 4:-9 5:-10 8:38 9:16 12:42 13:12 14:-8 21:22 22:-9 23:19 25:19 26:-8 27:-20 31:49 32:10 33:-11 123:-14
we anyth	23:25
have _ anyth	23:25
have _ an	122:10
tin _ the	8:-8 21:26 22:17 77:14 78:-18 123:18
tin that	0:13 22:22
that would	0:46 3:-9
the _ that	4:23 5:-10 6:10 22:21 27:18 37:11 49:15 53:10 87:-9 105:9 116:20
tin _ would	0:16
that _ do	0:9
ther anyth	11:11 17:26 22:30
the slot	1:-8 2:-14 3:15 4:33 13:-25 16:-12 17:-8 18:70 27:9 33:14 35:-22 42:37 43:-10 69:-25 70:12 73:27 74:49 75:22 76:-8 77:-26 81:16 86:-13 87:-13 90:51 102:41 103:13 106:29 123:-15
is _ anyth	11:11 17:26 22:24
ther _ in	22:17
the _ #n	0:-13 2:-11 6:-10 10:13 13:-30 15:-9 17:-22 18:-13 22:-8 24:15 26:27 27:-24 28:23 29:30 30:-12 35:28 36:24 37:8 38:-12 40:-11 41:-11 43:-22 44:10 47:-11 49:-15 63:-9 64:9 65:11 70:25 71:10 73:-10 74:34 75:37 76:-13 77:29 81:17 82:-21 83:16 86:-17 87:-8 88:-18 91:34 92:28 94:30 95:11 96:-9 98:-8 102:-8 104:-17 105:26 106:-16 107:9 112:29 113:19 114:15 116:26 118:12 123:-47
plac==e	1:42 9:10 14:23 25:9 28:11 29:-9 39:-8 43:12 52:18 57:8 71:9 86:9 91:-9 102:8 107:12 110:-8 123:-15
end==s	0:-8 1:52 3:94 13:-8 16:-13 27:43 29:-10 30:16 35:-15 38:38 40:14 42:52 43:-12 74:-17 76:-15 77:18 78:18 79:13 80:-8 90:-18 91:-17 92:9 106:23 123:-8
plac	1:45 9:10 14:23 25:8 28:11 29:-10 37:12 39:-10 44:-8 49:-12 52:18 57:8 71:23 74:10 81:-10 86:9 91:-10 107:12 110:-8 115:15 123:-15
^ plac	1:23 49:-8 115:12
@wire piec	1:12 3:-9 45:-11
piec #n	0:-98 1:109 3:19 4:-15 5:-8 13:-15 16:-10 17:-11 22:39 23:44 29:-11 30:-8 33:74 35:113 36:75 37:84 38:-10 39:93 40:-12 41:-11 44:-16 64:-9 68:81 69:50 70:-23 72:-8 74:-19 76:-15 80:-10 81:-30 88:-12 90:-15 91:-11 92:-9 94:-12 96:-22 104:-8 123:47
#n piec	1:-19 3:-32 33:14 35:10 69:45
number	1:54 2:-8 3:22 4:-24 5:-12 8:-9 10:-11 11:-17 12:-12 13:30 15:-16 17:-18 18:-9 22:-16 23:22 25:-13 26:-8 28:-9 29:-25 30:-16 31:-8 34:-8 35:37 36:43 37:57 38:-9 39:50 40:-12 41:-10 44:44 49:-8 54:-11 58:26 59:47 63:8 64:22 69:39 70:-22 72:14 74:-18 76:-8 78:-10 80:10 81:15 82:-8 83:-12 86:-8 88:-8 89:9 91:10 93:-14 94:12 95:-9 97:-11 98:15 99:-8 100:65 101:52 102:-10 103:-11 104:-13 105:24 106:-9 107:-10 110:-10 112:-10 113:-11 115:13 116:-15 117:8 123:21
piec number	3:-10 23:13 36:8
number #n	1:57 3:24 4:-22 5:-11 10:-10 11:-10 13:57 14:-8 15:-12 16:9 17:-12 18:-8 22:-14 23:27 27:-9 29:-16 30:-14 35:39 36:43 37:61 39:54 40:-11 41:-10 44:45 59:-8 63:15 64:24 69:40 70:-21 72:15 74:-18 80:11 81:16 83:-11 89:10 91:11 93:-13 94:13 95:-8 97:-17 98:-17 100:28 101:23 102:-8 103:-9 104:-12 105:28 106:-8 107:-8 110:-9 112:-8 113:-10 115:13 116:-14 117:10 123:-38
piec #d	1:-9 3:-20 33:9 36:31 45:-14 68:10
one_raw	3:24 41:-9
end one_raw	3:24 41:-9
piec the	1:9 3:-13 33:8 69:19
the #d	0:-45 1:32 4:-14 7:-12 8:-8 9:-8 16:-15 18:-17 23:31 35:148 36:37 37:59 38:-13 39:110 40:-28 41:-8 49:-13 69:109 70:-9 71:-9 73:-14 74:-9 75:-8 77:-12 80:49 81:22 82:-12 87:-16 88:-10 91:-8 123:58
#d long	1:23 3:13 39:-13 68:29 81:11
~ length	3:18 45:-16 55:-9 84:38 119:-13
mm wire	79:8 87:-13
#d wire	65:11
mm piec	0:-11 1:13 38:11
piece	1:55 2:-11 3:-14 4:-17 5:31 6:36 8:85 9:-20 11:-10 13:-14 14:-9 15:-15 16:-10 17:-12 18:-8 19:-15 20:-8 22:95 23:58 25:-11 27:-14 29:-14 32:-11 33:-12 35:13 36:-8 37:19 38:18 39:68 40:-10 41:-17 49:-9 64:-9 65:-12 69:9 70:-16 74:-26 77:-8 78:53 80:78 81:78 82:44 90:-9 94:-14 95:-9 96:-13 123:-22
piec piece	3:-9 69:14
piece #n	0:-10 1:72 3:-12 4:-10 15:-11 22:-10 23:28 29:-8 35:17 37:25 39:73 69:10 70:-11 74:-24 80:75 81:42 95:-8 96:-8 123:-14
#d piec	1:9 3:-13 36:16 69:8
in wire	18:-11 21:12
plac _ the	53:9 74:9 102:8
the _ piec	1:16 3:-9 35:-19 36:12 39:17 69:12
piec _ piec	3:-13 36:10 69:10
#n _ number	35:11 100:9
piec _ of	3:-9 36:16 45:-8
of _ length	22:35
#d _ end	37:18 69:18
the _ long	3:29 17:-8 56:21
#d _ ~	55:-13 84:31 119:-9
#n _ wire	71:14
wire _ piec	23:11
job _ piec	1:-11 3:-10 33:20 36:10
of _ piec	3:-9 68:10 69:9
#n _ piec	0:-23 1:23 35:60 36:-9 38:11
number _ piec	69:11
#d _ #d	2:35 3:-25 36:8 38:32 40:-16 41:-19 45:-13 68:10 69:-9 71:44 73:27 74:-17 79:62 80:-8 81:-11 87:-12 91:-8
#d _ wire	45:14 48:-10 67:9 79:11 87:-9
length _ piec	68:11
#d _ piece	81:20
piece _ wire	23:27
piece _ piec	3:-9 69:16
#n _ piece	69:16 78:23
wire _ length	80:16 81:-8
#d _ piec	1:8
mm _ the	1:10 2:17 3:39 38:16 40:-20 44:-9 45:14 65:22 66:-8 67:20 68:18 71:8 79:8 91:9 92:-13
plac #n	1:9 43:13
#d _ length	1:8 3:15 40:8 41:-10 45:-13 55:-9 77:-8 79:12 81:23 87:-10
#d job	2:10 3:-43 41:20 69:17 71:9 73:16 77:27 92:-9
in _ #d	3:-13 40:22 45:17 84:-13
piec _ length	68:-11 123:19
are==	3:-8 4:13 5:-36 6:-23 7:36 8:21 9:31 10:-17 11:22 12:79 13:20 14:12 15:-19 16:-14 17:12 19:-10 20:-18 21:-18 23:21 25:10 26:28 27:18 28:64 29:18 30:-30 31:51 32:46 33:-40 34:12 35:-17 36:-10 37:-14 38:-22 39:-14 40:-15 41:-20 42:29 44:-14 46:-21 47:9 49:-30 50:-17 51:27 53:43 54:37 56:-10 57:-14 59:-8 60:-10 61:-9 62:-12 63:-13 64:-10 65:36 67:15 68:-11 70:18 72:-10 73:32 74:-17 75:-9 76:-15 77:-11 78:-8 80:35 85:-8 86:-14 87:8 89:9 90:27 91:-11 93:-10 94:21 95:16 96:-13 97:21 98:25 99:-14 101:60 102:-15 103:-15 104:-21 105:-11 106:14 107:34 108:24 109:-16 110:-15 111:11 113:-14 114:-16 117:-8 118:-10 120:9 122:-11 123:-13
any==	0:25 1:54 3:-15 4:-10 8:27 10:-8 11:43 12:8 13:-13 14:-8 15:-8 16:-13 17:36 18:19 19:-11 20:-12 22:70 23:36 25:-16 26:13 28:-13 29:-13 31:31 33:-11 34:-8 35:-9 36:-17 37:56 38:-9 42:-13 46:17 48:-9 49:-9 52:-13 54:-9 56:9 58:-9 59:35 61:27 62:-8 63:-10 64:34 65:-9 71:-10 77:-12 78:-13 83:19 85:9 86:14 88:-8 91:-9 92:-8 98:-14 99:52 100:-15 101:-8 106:-10 107:-11 108:14 109:-13 111:14 115:-10 117:-9 119:-13 120:48 123:-39
are	3:-8 4:13 5:-36 6:-23 7:36 8:21 9:31 10:-17 11:22 12:79 13:20 14:12 15:-19 16:-14 17:12 19:-10 20:-18 21:-18 23:21 25:10 26:28 27:18 28:64 29:18 30:-30 31:51 32:46 33:-40 34:12 35:-17 36:-10 37:-14 38:-22 39:-14 40:-15 41:-20 42:29 44:-14 46:-21 47:9 49:-30 50:-17 51:27 53:43 54:37 56:-10 57:-14 59:-8 60:-10 61:-9 62:-12 63:-13 64:-10 65:36 67:15 68:-11 70:18 72:-10 73:32 74:-17 75:-9 76:-15 77:-11 78:-8 80:35 85:-8 86:-14 87:8 89:9 90:27 91:-11 93:-10 94:21 95:16 96:-13 97:21 98:25 99:-14 101:60 102:-15 103:-15 104:-21 105:-11 106:14 107:34 108:24 109:-16 110:-15 111:11 113:-14 114:-16 117:-8 118:-10 120:9 122:-11 123:-13
^ are	1:30 8:22 9:11 11:28 17:16 25:18 28:61 29:12 31:15 32:22 42:-10 52:-21 53:-12 107:34 111:-14 123:-8
are the	1:12 4:53 12:-8 13:-12 14:23 17:-11 25:-25 28:15 29:33 32:27 34:19 69:10 73:-8
any	0:25 1:54 3:-15 4:-10 8:27 10:-8 11:43 12:8 13:-13 14:-8 15:-8 16:-13 17:36 18:19 19:-11 20:-12 22:70 23:36 25:-16 26:13 28:-13 29:-13 31:31 33:-11 34:-8 35:-9 36:-17 37:56 38:-9 42:-13 46:17 48:-9 49:-9 52:-13 54:-9 56:9 58:-9 59:35 61:27 62:-8 63:-10 64:34 65:-9 71:-10 77:-12 78:-13 83:19 85:9 86:14 88:-8 91:-9 92:-8 98:-14 99:52 100:-15 101:-8 106:-10 107:-11 108:14 109:-13 111:14 115:-10 117:-9 119:-13 120:48 123:-39
#d any	1:13 37:11 123:-8
any use	1:24
use on	5:34
are _ #d	1:15
the _ any	41:14 113:9 123:-8
#d _ use	1:8
any _ on	0:-8 1:33 18:-8
use _ @job	5:18
is #d	0:-13 1:43 3:68 8:30 9:-9 13:-8 17:-10 18:-9 23:17 25:-9 26:-8 35:-9 37:-10 38:-17 39:-12 40:48 48:-10 54:-8 67:27 75:66 76:-18 79:36 84:17 86:-15 87:49 88:-8 90:-16 91:38 120:17 123:-20
of any	1:10 9:25
for @job	0:-19 2:28 3:-9 4:33 5:10 9:-10 13:30 15:-11 16:24 17:-11 18:32 20:-8 23:18 27:-11 29:-33 30:-10 35:22 37:16 42:30 63:-8 64:-10 72:31 76:9 79:-11 82:27 83:50 90:19 94:11 104:15 112:-10 123:-12
)~"
R"~(is _ of	1:12 8:16 9:-18 13:-21 17:21 19:-8 22:-8 23:35 24:21 27:32 62:9 67:13 85:8 98:11 119:10
#d _ any	1:8
of _ use	22:16
any _ for	0:9 1:38
good==	0:-14 1:45 3:15 8:-16 9:32 18:38 22:14 23:-29 29:-8 31:-8 39:25 40:9 44:27 61:24 76:14 85:24 88:8 91:-10 92:8 99:21 101:12 114:-12 117:8 123:-8
are number	1:8
#n any	37:27 64:24 83:14 86:9 123:-19
good	0:-14 1:45 3:15 8:-16 9:32 18:37 19:17 20:-9 22:14 23:-34 29:-9 31:-8 39:24 40:9 44:27 61:24 76:14 85:24 88:8 91:-10 92:8 99:21 101:12 114:-12 117:8 123:-8
any good	1:11 18:42 22:10
good for	1:55 3:-10 22:8 23:-25 76:17
are _ #n	1:15 22:12 51:32 53:12 54:9 65:16 116:9 117:-9
number _ any	1:8
#n _ good	1:8 3:10 92:11
good _ job	1:8
is _ any	1:9 26:18 123:20
good _ @job	1:9
use _ the	1:13 5:11 72:11
are #d	67:23 73:25 81:9
@wire of	38:23 65:-15 67:14 80:24
are _ of	7:8 42:10 65:14 80:12 81:12
of _ of	5:14 8:-8 21:10 33:12 65:-14 67:11 69:12 80:13 83:20
@wire _ any	0:-8 1:21 80:12
use _ job	5:37
the _ of	0:-18 2:9 5:-24 6:33 8:-16 10:19 12:-19 13:45 15:11 16:-22 17:-21 18:37 19:42 20:42 24:-15 25:-10 26:15 27:-29 28:12 29:-14 30:33 32:21 33:22 38:-15 41:-12 42:28 44:-26 46:32 47:-13 49:-35 50:-15 54:-12 57:12 58:-10 59:32 60:10 61:-9 63:-15 65:-13 67:-11 68:10 69:-23 70:-12 71:-22 74:51 75:11 76:-16 77:-15 78:-32 79:11 80:-29 81:10 82:-9 83:-14 85:-14 86:33 88:-23 89:11 90:-17 91:-17 94:10 96:14 97:9 98:17 99:9 100:-9 101:-12 103:19 105:-16 106:28 107:63 109:47 112:33 113:-12 114:34 115:-16 116:-33 117:18 121:13 123:-10
^ could	1:53 3:36 7:9 10:13 13:20 15:50 16:-9 17:-8 18:35 26:16 29:-12 30:47 35:-25 63:-13 73:-8
could i	3:39 7:8 10:14 18:30 22:22 26:16 30:25 33:-10 35:-15 123:-34
use number	1:8
#n for	0:-36 1:-8 3:-23 4:-12 16:-14 30:9 33:-9 35:75 36:49 37:15 41:44 44:-9 64:23 69:22 72:19 77:11 80:15 81:-9 82:-9 83:-10 90:-13 104:19 114:10 123:17
could _ use	0:-10 3:40 5:21 18:13 35:-14 123:-13
i _ number	1:8 35:12 71:-8 77:11
use _ #n	0:-8 3:37 33:29 35:-25 37:-8 100:9 123:20
number _ for	0:-12 35:44 36:18 37:16 76:11
^ can	0:-10 1:65 3:10 7:13 10:11 11:-8 16:14 17:30 20:9 29:36 30:62 34:-32 36:18 46:-8 90:25 122:-25 123:44
can use	1:9 100:11 101:50
use piece	35:14
may==	0:-8 1:23 3:14 12:-9 13:-11 14:8 17:8 18:-9 19:14 26:8 27:-12 30:10 34:22 37:36 42:15 47:-8 54:15 57:29 60:13 82:-13 86:13 101:19 109:-10 113:9 123:29
may	0:-8 1:23 3:14 12:-9 13:-12 14:8 17:8 18:-11 19:13 20:12 21:29 27:-13 30:9 34:21 37:36 42:15 47:-8 54:15 57:28 60:13 82:-14 86:13 101:19 105:-8 109:-10 113:9 123:29
^ may	1:21 3:15 11:10 14:11 17:11 19:15 26:11 34:26 123:-8
use #d	1:33
@wire for	0:-11 6:24 9:11 18:18 20:37 23:-13 35:10 36:23 38:25 73:-8
use _ of	1:30
of _ for	0:-12 4:18 16:-8 18:9 20:14 23:-10 30:11 35:-12 36:26 38:17 42:31 53:8 73:-8 83:-9 85:12 99:11 100:9 109:13
@wire _ job	6:16 18:43 24:8 36:11 71:16
use the	1:8 5:14 16:12 18:9 35:17 100:12 123:-10
we _ the	1:9 6:9 9:10 13:12 16:16 19:17 27:16 30:12 31:-9 32:9 39:10 61:10 70:19 99:18 102:18 106:-10 116:12 121:-10
use _ #d	1:9 35:23 81:11
may we	1:9 29:8
use #n	35:40
we _ #n	0:9 1:11 30:9 49:12 65:17 81:10 98:36
use _ on	18:14 35:12
#d on	35:14 40:29
wher==e	0:-20 1:172 3:19 4:46 5:-23 6:44 8:-10 9:-20 11:-9 13:53 16:41 17:35 18:-9 19:10 20:65 21:-9 23:-11 25:-9 27:-12 29:20 32:23 33:14 34:10 36:-9 37:-13 38:-28 39:-18 42:-10 49:-8 50:-18 68:-9 73:-8 88:14 97:13 98:-10 106:-11 107:-14 123:23
doe==s	0:-14 1:62 3:21 5:9 6:33 8:-18 9:43 10:-15 11:-21 12:-13 14:39 15:81 17:19 18:57 19:8 20:17 21:-12 22:10 23:9 24:14 25:28 27:20 28:63 29:17 32:61 33:-47 34:69 35:-11 37:-12 38:-10 40:-12 42:-14 43:-9 44:-9 46:-9 49:-8 51:-8 52:-14 53:-8 60:-14 61:12 62:-15 63:39 64:35 72:-26 73:-17 74:-17 76:-15 86:-8 90:-10 91:-13 92:-10 94:-8 96:-11 98:-9 100:15 101:-8 104:-13 106:-14 107:-11 108:27 109:-13 112:-14 113:10 120:-12 122:-16 123:28
belong==	1:19 12:11 64:11
wher	0:-20 1:172 3:19 4:46 5:-23 6:44 8:-10 9:-20 11:-9 13:53 16:41 17:35 18:-9 19:10 20:65 21:-9 23:-11 25:-9 27:-12 29:20 32:23 33:14 34:10 36:-9 37:-13 38:-28 39:-18 42:-10 49:-8 50:-18 68:-9 73:-8 88:14 97:13 98:-10 106:-11 107:-14 123:23
^ wher	1:30 4:29 5:-19 6:30 9:-14 13:26 16:29 17:44 19:14 20:55 29:22 32:26 33:12 34:12 42:-8 106:-10 107:-12 123:9
doe	0:-14 1:62 3:21 5:9 6:33 8:-18 9:43 10:-15 11:-21 12:-13 14:39 15:81 17:19 18:57 19:8 20:17 21:-12 22:10 23:9 24:14 25:28 27:20 28:63 29:17 32:61 33:-47 34:69 35:-11 37:-12 38:-10 40:-12 42:-14 43:-9 44:-9 46:-9 49:-8 51:-8 52:-14 53:-8 60:-14 61:12 62:-15 63:39 64:35 72:-26 73:-17 74:-17 76:-15 86:-8 90:-10 91:-13 92:-10 94:-8 96:-11 98:-9 100:15 101:-8 104:-13 106:-14 107:-11 108:27 109:-13 112:-14 113:10 120:-12 122:-16 123:28
#n doe	37:12 72:-21 88:44 90:9 113:10
doe #n	2:12 3:23 5:15 16:-12 74:-11 88:-25 123:49
belong	1:19 12:9 14:15 58:18 64:32 77:-8
#n belong	1:12 64:14 77:-8
wher _ job	1:8
job _ doe	72:-21 113:11 123:29
doe _ belong	1:10
belong $	1:13
go==	0:11 1:42 2:-10 4:-9 8:-10 13:-11 17:-13 18:14 19:-16 20:50 21:-8 22:9 23:-11 25:-8 27:21 29:15 34:-8 37:114 43:-12 46:14 49:-8 56:25 61:19 64:-8 76:-8 77:-9 80:11 81:14 82:-8 83:75 85:17 88:-8 97:22 103:21 106:8 107:12 112:-8 122:-8
#n would	1:14
would #n	0:-8 1:24
go	0:11 1:42 2:-10 4:-9 8:-10 13:-11 17:-13 18:14 19:-16 20:50 21:-8 22:9 23:-11 25:-8 27:21 29:15 34:-8 37:114 43:-12 46:14 49:-8 56:25 61:19 64:-8 76:-8 77:-9 80:11 81:14 82:-8 83:75 85:17 88:-8 97:22 103:21 106:8 107:12 112:-8 122:-8
#n go	1:22 37:17 83:8 97:25 123:-18
would _ go	1:8
go $	1:37 5:-8 22:15 37:32 38:-13 56:11 83:39 85:23
wher on	1:18
@job doe	113:19
fit $	0:46 1:15 34:20 81:8
@job would	0:-8 18:10
wher _ the	4:33 13:-13 17:11 19:-8 20:26 29:13 32:10
@job could	2:17
#n fit	1:12
the _ could	5:12 16:10
@job _ number	13:-23 41:17 69:23 70:-10 123:67
could _ #n	1:22 2:17 30:39 103:-8
would the	0:-9 10:17 18:18 22:-9 27:15
#d go	37:16 38:11
the _ go	11:14 18:11 19:-8 20:28 33:8
would _ of	1:20
wher would	1:16 19:21
would a	3:17 16:11 40:-8
a #n	0:13 1:41 49:12 78:-10 98:13 103:24
wher _ a	1:15 97:9
would _ #n	1:17 16:10 43:-10
a _ mm	0:32 1:36 38:-16 67:10 84:9
the _ belong	63:14
a #d	1:30 3:49 38:39 123:10
this==	0:-23 1:17 5:-14 8:-24 10:22 11:49 12:-9 13:-12 14:14 15:-11 16:-8 19:-14 20:48 21:22 23:-9 25:8 27:-9 28:16 29:39 30:12 31:-9 32:-12 34:-10 40:8 44:8 45:-8 51:-32 52:36 53:53 58:15 74:-9 88:-10 94:17 97:-8 100:13 104:14 107:-10 108:-28 109:63 110:27 111:-9 114:-8 116:12 120:-9
wher doe	1:26 32:10
this	0:-26 1:13 5:-15 8:-25 10:21 11:41 12:-10 13:-21 14:13 15:-13 16:-14 19:-14 20:47 21:21 22:-8 23:-10 27:-11 28:11 29:39 30:12 31:-10 32:-13 34:-11 41:-9 42:14 43:10 44:9 45:-8 51:-33 52:37 53:60 58:14 60:-8 61:-9 62:-9 71:-9 74:-15 76:12 77:-13 88:-14 90:-11 94:37 96:26 97:-10 98:-9 99:-10 100:36 101:-10 104:11 106:22 108:-29 109:51 110:60 111:-11 114:34 116:15 120:-9
in fret	3:12
fret of	0:15 1:-9 2:39 3:25 5:23 6:15 9:-15 13:12 16:-30 17:-14 20:-10 24:10 35:14 36:9 38:13 41:8 42:49 43:9 44:25 50:12 69:-26 70:-23 71:36 74:47 77:-18 81:-10 88:-10 89:10 90:-9 91:-10 92:-11 95:14 96:-9 106:15 107:15 123:-25
@wire go	1:10 18:12 19:-9 20:34
doe _ #d	1:15
#d _ fret	3:36
in _ of	7:17 20:8 53:19 81:9 83:29 110:-8 119:18 120:14
fret _ the	2:36 3:34 5:15 12:33 13:12 16:-13 17:24 27:-10 29:-9 35:-13 42:18 43:-8 45:15 71:20 74:23 76:-9 77:-11 78:11 81:9 88:-12 92:18 95:8 102:8 106:-9
doe the	0:8 1:-11 5:-16 6:18 8:-11 9:9 12:-8 13:-18 14:-9 15:26 16:11 17:21 18:17 20:24 23:26 25:63 28:9 29:-9 31:24 33:-9 34:8 63:28 64:16 73:-11 123:-12
piec of	38:10 67:13
piec _ @wire	38:10 67:13
of _ go	1:12 38:11 83:13
wher could	1:18 38:-11
#d _ go	37:15 80:-10 81:15
wher should	6:16 29:11
mm _ of	1:23 3:-11 16:19 41:16 80:21 81:23 119:17 120:-17
mm offcut	1:11
offcut of	1:15 3:-9 38:15
@wire _ go	18:10 80:17
doe a	1:12 123:50
in @wire	0:30 21:55 80:21
a _ of	0:-23 1:17 2:15 3:-13 4:24 8:-9 11:11 12:20 17:-8 20:12 22:-10 27:-10 30:-8 38:-13 40:19 42:-8 49:15 59:11 60:-9 62:23 65:-11 66:-28 67:25 68:16 73:9 75:19 77:-9 78:56 79:9 86:-13 91:24 94:11 98:13 107:9 112:10 115:9 120:-8 123:25
mm @wire	0:12 1:12 37:31 38:16
doe _ #n	0:-11 4:18 5:26 6:15 13:22 14:24 15:44 17:15 33:-8 63:17 64:21 123:-15
)~"
R"~(#d @wire	0:44 8:-11 18:-11 22:-17 23:-9 35:48 36:34 37:-14 38:8 39:42 49:-9 69:15 80:62 81:52 95:-9 123:-9
a _ @wire	38:56
the _ mm	1:10 3:14 35:-8 37:31 80:48 81:40
mm the	80:16
@wire offcut	1:15
piece _ fit	5:13
number _ go	37:14
to==	0:-21 2:17 3:-37 4:38 5:12 6:-14 7:-16 8:-32 9:13 10:65 11:19 13:31 14:-10 15:42 16:12 17:8 18:34 19:-16 21:-15 23:-14 24:-15 25:-42 26:-36 28:8 29:11 30:22 32:-10 33:-27 35:-51 36:16 38:-8 40:-9 41:-34 42:-26 43:37 45:26 46:16 49:-12 50:15 51:-10 52:23 54:70 55:20 56:50 57:16 58:17 59:-24 60:70 61:-14 62:30 63:67 64:36 66:-20 68:32 69:-13 71:15 72:-22 73:-21 74:98 75:-10 76:-37 77:-17 78:-22 80:24 81:-57 82:33 83:-24 84:-17 86:9 88:30 89:-30 90:-21 91:-10 92:-9 93:-14 94:-13 96:-37 97:30 98:28 99:-8 100:-11 102:-13 103:-14 104:13 105:-27 106:17 109:40 110:32 111:-29 112:-24 113:9 115:-14 116:-45 117:39 118:-8 119:14 120:21 121:11 122:17 123:32
put==	0:-13 1:19 3:-11 4:-12 5:-10 9:15 10:-12 11:-14 13:-18 17:-10 20:-10 22:-9 23:39 25:-11 27:-12 29:-19 30:-12 31:-11 33:18 34:-9 35:66 36:63 37:-8 38:22 39:-8 42:-11 43:-9 44:-9 49:42 54:33 57:16 61:43 62:-14 63:42 67:-9 68:22 69:-16 76:-10 77:-8 81:-9 82:39 83:11 86:-8 88:-9 90:-11 91:-8 94:26 95:15 96:-9 97:9 99:-14 100:-8 101:19 103:9 104:9 106:-11 107:11 112:12 113:-11 114:9 119:14
to	0:-23 2:17 3:-38 4:35 5:12 6:-14 7:-17 8:-32 9:13 10:65 11:19 13:30 14:-10 15:41 16:9 17:8 18:34 19:-16 21:-16 23:-14 24:-15 25:-42 26:-36 28:-11 29:10 30:22 32:-10 33:-27 35:-52 36:15 38:-8 40:-10 41:-34 42:-27 43:35 45:25 46:15 49:-13 50:14 51:73 52:14 53:25 54:69 55:20 56:50 57:15 58:16 59:-25 60:69 61:-14 62:29 63:66 64:36 66:-20 68:31 69:-19 70:-9 71:15 72:-23 73:-22 74:86 75:-11 76:-38 77:-18 78:-22 79:-8 80:23 81:-59 82:33 83:-25 84:-17 86:9 88:19 89:-30 90:-22 91:-11 92:-10 93:-14 94:-14 96:-38 97:29 98:25 99:-8 100:-11 102:-13 103:-15 104:39 105:-28 106:17 108:56 109:30 110:10 111:-31 112:-25 113:9 115:-14 116:-46 117:37 118:-9 119:13 120:21 121:11 122:17 123:27
wher to	1:37 6:16
put	0:-13 1:18 3:-11 4:-12 5:-10 9:15 10:-12 11:-15 13:-18 17:-10 20:-10 22:-9 23:39 25:-11 27:-12 29:-19 30:-12 31:-11 33:18 34:-9 35:66 36:63 37:-8 38:22 39:-8 42:-11 43:-9 44:-9 49:41 54:33 57:16 61:43 62:-14 63:42 68:22 69:-16 76:-10 77:-8 81:-10 82:39 83:11 86:-8 88:-10 90:-11 91:-8 94:26 95:15 96:-9 97:9 99:-14 100:-8 101:19 103:9 104:9 106:-11 107:11 112:11 113:-11 114:9 119:14
to put	1:15 6:16
put a	36:11 48:8 97:10 123:17
wher _ put	1:12 6:16
to _ a	0:12 27:10 32:12 38:-14 45:10 49:12 57:10 66:-8
put _ #d	1:16 36:27 40:9
put the	1:11 6:14 17:8 29:10 36:26 49:13 66:18 75:11 101:8 107:26 123:-8
to _ the	2:25 4:-13 5:-9 6:10 11:-11 13:-8 16:-9 17:-13 18:24 22:15 24:13 27:10 28:8 29:-9 36:-22 42:-8 52:9 74:12 82:11 94:20 97:13 100:8 106:21 107:24 123:59
#d _ offcut	1:18
offcut $	1:13
put #n	3:11 67:10 103:14
mm fret	0:17 3:16
to _ #n	0:11 4:8 13:21 18:10 33:13 36:-9 40:-8 44:31 49:-10 51:10 53:-10 64:12 74:22 77:-13 87:20 88:8 95:13 96:-17 104:14
put _ mm	54:23
fret _ @wire	5:14 9:-10 24:14 38:18 50:13 78:9
offcut _ @wire	1:12 3:-9 38:11
the #n	0:65 3:-9 4:28 5:15 6:-14 7:-8 11:-13 12:22 13:12 15:33 16:-28 27:-28 29:21 30:16 31:31 33:21 35:-22 37:41 39:-15 40:-8 41:38 42:-17 43:-15 44:-18 46:-10 47:23 49:-34 52:-14 64:11 65:-15 66:20 70:-17 77:12 80:43 81:47 82:13 83:-11 86:19 88:-9 89:-12 90:-8 91:-9 92:-8 106:17 107:-8 111:31 116:-8 123:-10
put _ #n	1:19 33:27 35:31 36:9 38:14 69:-13 71:-8 112:18 123:-8
what slot	0:-18 1:41 13:14
slot for	0:-26 1:48 4:21 106:13
for a	23:12 27:17 30:43 62:10 97:8 104:9 117:9
what _ for	0:-15 1:18 16:18 29:12
slot _ a	75:11
for _ #d	0:18 18:8
take==s	0:-10 1:16 4:-8 13:-9 27:-8 32:-9 33:-17 34:11 42:-10 63:52 64:-17 72:32 82:55 98:38 102:22 103:138 120:67 123:-15
which slot	0:-34 1:90 4:-12 13:73
slot take	1:22 103:14
take this	1:8
this #n	38:24
which _ take	1:12
slot _ this	0:-9 1:15
take _ #n	0:-12 1:43 23:11 30:20 36:-10 37:-10 47:18 59:23 63:28 64:27 81:15 103:14 120:8
this _ mm	38:12
for this	20:16 26:10 28:8
fret $	2:40 4:-12 13:56 16:-9 17:24 23:-8 27:59 35:24 36:-9 42:-12 44:-9 50:12 76:-14 78:15 90:-8 92:42 103:35 123:-9
what _ take	1:10
take _ #d	35:72 65:8 80:9 123:-20
piec $	0:14
slot _ the	0:13 1:11 4:33 13:-11 18:17 42:-12 73:20 75:8 90:-9 102:25 107:25
for number	0:21 1:29 3:26 41:-14 42:17 46:15
slot _ number	13:46
take piece	1:12
slot _ piece	1:9
take #d	1:8
slot _ #d	18:42 24:-10 73:79 75:-20 92:-8
take _ of	8:-11 123:43
take #n	1:9 35:8 80:13 98:27 103:12 119:9 120:26 123:31
wher do	4:15 6:13 9:-9 17:27 29:10 32:30
do we	0:13 2:18 4:10 5:-12 6:21 7:19 8:51 9:18 10:21 11:22 13:-11 16:15 18:9 21:-10 22:17 25:37 30:-9 31:-15 32:60 33:-12 34:-12 41:-8 114:-8 121:-11 123:-16
wher _ we	1:11 5:-12 6:18 13:44 19:35 20:-9
we _ #d	1:11 65:19
wher can	1:8 34:17
we put	1:15 8:16 23:17
put #d	35:13 54:23
can _ put	36:12
i put	9:23 10:-8 15:8 16:22 18:16 29:-17 35:23 49:11 69:-12 75:10 95:9 123:-8
wher _ i	6:12 16:31 17:30 29:19 32:13 33:-12 34:14 107:-8 123:24
i _ #n	1:15 3:10 22:9 32:13 69:16 74:23 80:20 81:-15 88:-9 91:9 123:-10
do _ put	9:23 10:-8 16:19 17:8 29:-9
we _ piece	39:15
i _ piece	1:11
should _ put	15:8
we _ a	49:17 66:-8 84:12 94:19 97:10 123:27
i _ a	12:-8 14:11 20:24 26:-10 29:27 30:16 34:32 38:17 49:-11 50:8 64:12 81:10 97:18 107:8 109:12 115:8 119:8 123:-27
use a	9:8
i _ the	0:-26 3:-11 4:14 6:27 7:10 9:-9 10:21 13:-11 16:42 17:14 19:9 20:-12 23:11 26:29 27:12 29:-8 33:33 34:14 35:-8 41:15 42:-10 43:-9 59:10 65:13 66:14 69:-13 73:21 75:12 76:-8 77:-12 81:10 82:-8 88:15 93:12 94:-9 96:26 99:-10 102:-8 104:9 106:-17 107:-13 110:8 123:-18
@wire fret	0:18 45:10 71:10 78:12 87:-10
in _ @wire	8:9 22:19 49:-10 65:13 80:12
need==ed	1:36 23:-15 25:12 37:41 43:11 105:13 123:-14
what is	1:24 2:11 8:50 9:45 10:11 11:29 12:68 14:-9 15:-18 17:30 18:-19 19:24 20:15 21:12 24:-17 27:59 28:-29 29:26 31:34 32:32 33:-16 34:11 42:-13 50:-9 54:-9 83:37 86:-12 93:-8 102:-12 104:-8 109:-8 112:-9 117:-8 123:39
is piece	1:25
need	0:23 1:67 5:-13 6:49 7:49 8:-26 9:19 10:9 11:18 12:-15 14:-9 15:-10 16:-13 17:-20 18:-13 19:-11 20:10 21:-14 23:-34 24:-10 25:46 26:-20 29:-21 30:-11 32:9 33:26 35:-8 36:-16 37:93 38:-8 39:-14 40:-9 41:14 42:-11 46:28 47:-9 49:-11 51:-17 52:-13 53:-8 54:-12 56:19 57:-11 60:-9 63:-10 64:-19 66:-10 73:-10 75:-8 76:-9 82:26 83:11 86:-8 88:-8 91:-9 92:-8 98:33 99:-22 100:-19 101:-11 102:162 104:32 105:79 106:-13 107:-14 109:-13 113:16 117:-11 120:20 121:13 122:-9 123:31
#n need	1:9 6:24 37:8 82:21 113:25 123:-15
need for	1:9 5:-9 6:24 7:8 23:-13 25:15
what _ piece	1:12 8:10
is _ #n	0:9 1:47 3:34 4:18 11:13 13:60 15:41 16:49 17:63 23:60 29:52 30:9 35:-14 37:-11 39:-10 40:-19 43:-14 44:-11 58:28 64:-14 66:-8 68:13 76:-13 86:-8 88:-15 90:-12 91:-8 92:-11 103:24 105:8 112:-20 113:-10 117:-9 120:18 123:-62
piece _ need	1:11
#n _ for	0:-20 1:33 3:16 7:14 23:-14 28:10 29:-9 33:12 35:-10 36:13 39:14 42:-10 49:16 53:10 69:22 70:-9 72:8 103:17 104:13 113:13
for $	0:-10 1:61 8:-14 9:-10 11:27 19:-9 21:26 23:45 25:67 29:-31 31:36 36:-9 46:-10 49:17
is number	1:11 23:21 105:10
#n good	1:28 23:-20
plan==ned	1:13 11:-9 23:-10 25:-8 29:50 75:9 82:31 83:-16 103:19
plan	1:11 2:47 5:105 6:-23 13:-12 16:28 18:-9 23:-18 25:-13 26:-17 28:-9 29:141 36:-12 42:-9 75:9 82:99 83:-23 103:17 104:-13 109:-12 123:-8
plan for	1:13 2:32 5:53 6:-12 11:11 16:18 23:-11 26:-13 29:53 82:17 83:-18 109:-12
what _ #d	1:19 23:-9
of _ plan	82:15
@wire _ for	7:-8 18:42 20:11 22:-11 23:23 36:11 39:13 78:29 80:25
#n plan	1:8 29:10
#d need	1:20
is _ need	1:11 37:18 105:14 123:-12
#d _ for	0:-9 3:44 35:17 40:19 41:-16 81:19
want==ed	1:32 4:14 11:9 29:-11 35:13 46:9 97:21 105:17
want	0:-14 1:66 2:-10 4:23 7:23 9:22 11:8 15:-12 16:9 17:-10 20:-16 23:-18 26:-9 29:-20 30:14 32:-13 33:-23 35:9 37:45 39:-8 46:39 50:14 55:16 64:-14 68:12 82:9 84:-11 90:14 97:23 98:12 99:-9 100:-10 102:21 104:8 105:25 109:-16 113:11 121:17 122:8 123:19
#d want	1:13
want for	4:10 19:9
is _ want	1:13
elsewher==e	1:36 3:10 47:15
elsewher	1:36 3:10 47:15
need elsewher	1:21
#n _ elsewher	1:14
elsewher $	1:36 3:10 47:15
want elsewher	1:15
)~"
R"~(#d _ elsewher	1:22
#n want	1:20 11:14 29:-10 46:15 90:18
piece _ want	1:13
@wire need	9:13 123:37
of _ need	123:37
need $	0:-8 5:-12 6:47 7:13 9:-9 13:18 22:11 27:-9 31:8 37:35 41:17 82:21 102:20 105:12 123:-18
anywher==e	0:-11 1:40 49:17 115:-8 123:-15
anywher	0:-11 1:40 49:17 115:-8 123:-15
want anywher	1:13
#n _ anywher	1:30 123:-12
anywher $	1:13 49:17 115:-8
the _ need	1:10 4:-8 6:17 98:15 102:30
cost==	1:43 2:9 9:-15 19:52 21:-11 27:-14 55:8 123:44
what doe	1:13 13:-9 17:13 20:15 23:30 27:-8 34:46
cost	1:42 2:9 9:-15 10:12 19:52 21:-11 27:-16 33:-11 54:9 55:8 123:44
doe cost	1:8
#n cost	1:8
what _ cost	1:13
cost _ #n	1:8
cost $	1:14 9:-15 19:56 21:-11 27:-14 55:8 123:47
it==	1:51 2:-26 4:-11 5:-8 6:-34 7:-15 9:-15 10:-10 11:-11 12:-18 13:-25 14:-25 16:-15 17:13 18:28 19:8 20:-10 22:-16 23:-25 24:19 25:-19 26:-25 27:-28 28:-23 29:-13 31:-25 33:9 34:-19 35:42 36:48 37:28 39:27 41:44 42:-15 43:20 44:-26 45:-14 46:10 47:11 49:12 50:25 53:-11 54:-14 56:32 57:-17 58:12 59:12 60:-20 61:-20 62:-14 64:17 65:-23 66:-17 67:-18 68:47 70:-16 72:-8 73:-12 74:-11 76:69 78:-23 79:-9 80:-15 81:-20 82:35 84:12 85:39 86:13 87:-13 88:88 89:-17 90:41 91:36 92:33 93:69 94:24 99:36 102:-16 103:-10 105:38 106:-13 107:13 108:-11 109:-35 110:-16 114:28 115:-10 117:-20 118:12 121:-14 122:53 123:-12
it	1:51 2:-26 4:-11 5:-8 6:-34 7:-15 9:-15 10:-10 11:-11 12:-18 13:-25 14:-25 16:-15 17:13 18:28 19:8 20:-10 22:-16 23:-25 24:19 25:-19 26:-25 27:-28 28:-23 29:-13 31:-25 33:9 34:-19 35:42 36:48 37:28 39:27 41:44 42:-15 43:20 44:-26 45:-14 46:10 47:11 49:12 50:25 53:-11 54:-14 56:32 57:-17 58:12 59:12 60:-20 61:-20 62:-14 64:17 65:-23 66:-17 67:-18 68:47 70:-16 72:-8 73:-12 74:-11 76:69 78:-23 79:-9 80:-15 81:-20 82:35 84:12 85:39 86:13 87:-13 88:88 89:-17 90:41 91:36 92:33 93:69 94:24 99:36 102:-16 103:-10 105:38 106:-13 107:13 108:-11 109:-35 110:-16 114:28 115:-10 117:-20 118:12 121:-14 122:53 123:-12
doe it	1:14 8:11 9:-10 13:25 15:14 16:11 18:11 30:10 32:12
it to	1:8 15:10 18:32 39:12 63:15
to take	1:17 17:10 23:22 34:13 109:30 120:13 123:-8
what _ it	1:32 10:13 17:-8 18:10
doe _ to	88:-24 123:50
it _ take	1:9
will==	0:-36 2:-9 3:52 4:-12 5:8 6:29 8:-15 9:50 11:-14 14:-10 16:-27 17:-17 18:45 19:-12 21:-12 22:13 23:-10 24:-8 25:-11 26:-8 27:-9 28:34 29:32 32:-15 33:-15 34:-8 35:35 37:13 41:-14 42:-24 44:-15 46:-12 47:17 49:-20 52:16 53:13 54:-9 63:28 64:-9 67:9 73:-9 76:-8 77:-10 82:-12 86:-11 87:-8 88:-10 90:-10 92:32 93:-18 98:-19 100:17 101:24 105:-16 106:-12 107:20 109:14 110:9 111:9 112:-10 114:26 115:14 117:41 118:61 121:16 123:44
will	0:-36 2:-9 3:52 4:-12 5:8 6:29 8:-15 9:50 11:-14 14:-10 16:-27 17:-17 18:45 19:-12 21:-12 22:13 23:-10 24:-8 25:-11 26:-8 27:-9 28:34 29:32 32:-15 33:-15 34:-8 35:35 37:13 41:-14 42:-24 44:-15 46:-12 47:17 49:-20 52:16 53:13 54:-9 63:28 64:-9 67:9 73:-9 76:-8 77:-10 82:-12 86:-11 87:-8 88:-10 90:-10 92:32 93:-18 98:-19 100:17 101:24 105:-16 106:-12 107:20 109:14 110:9 111:9 112:-10 114:26 115:14 117:41 118:61 121:16 123:44
what will	1:19
will it	1:14 9:33 18:10 27:-8 123:-9
it cost	1:16
it _ the	17:-9 38:20 39:9 41:10 47:15 49:11 56:-11 66:-13 71:15 76:31 77:8 85:10 99:24
cost _ #d	54:10
the _ cost	9:-8 19:22
@wire cost	9:-14 19:47
what would	5:26 10:14 16:9 22:-9 30:24
take number	1:11 35:12
what _ to	5:17 10:32 11:24 16:-9 20:10 29:-24 30:21 31:-8 33:19 82:11
would _ take	30:9
to _ number	1:10 37:18
to _ #d	50:20 73:9 91:9
if==	0:49 1:32 2:19 5:42 6:-10 8:-10 9:14 10:-10 11:-11 13:-10 16:84 17:-18 18:13 22:-13 30:51 33:-12 34:-9 35:-19 40:-20 41:42 43:-12 44:-10 50:22 71:-8 73:-12 74:-8 88:-20 102:-9 104:8 109:-8 123:114
took==	15:39 16:-9 17:-8 35:8 38:-8 39:-11 42:8 44:-9 47:18 49:22 56:63 65:-9 81:103 86:34 96:42 123:-14
if	0:49 1:32 2:19 5:42 6:-10 8:-10 9:14 10:-10 11:-11 13:-10 16:84 17:-18 18:13 22:-13 30:51 33:-12 34:-9 35:-19 40:-20 41:42 43:-12 44:-10 50:22 71:-8 73:-12 74:-8 88:-20 102:-9 104:8 109:-8 123:114
if i	0:10 5:19 16:31 30:18 104:11 123:-9
took	15:39 16:-9 17:-8 35:8 38:-8 39:-11 42:8 44:-9 47:18 49:22 56:63 65:-9 81:103 86:34 96:42 123:-14
i took	43:-8 81:36 86:21 96:17
took #n	81:54
will _ cost	1:8
it _ if	3:20
to use	72:11
it _ to	17:9 27:24 29:-10 31:10 37:9 68:12
would it	0:14
if _ use	5:14 16:13
i have	1:39 2:-15 4:-8 9:9 10:29 12:16 17:-10 18:8 19:12 25:-11 26:44 28:-13 29:11 31:-8 33:-13 34:-11 65:-8 69:10 71:13 77:8 93:9 96:-13 97:8 98:19 99:17 104:12 106:9 109:13 118:9
have the	10:13 11:10 19:14 26:15 31:12 37:26 85:11 123:-9
can _ have	1:35 29:18
have _ #d	1:18 37:27 40:8 65:8
have #d	1:26 65:18
i _ #d	1:28 65:10
may i	11:10 14:11 19:15 26:11 27:-10 30:12 34:24
have _ of	65:18
have #n	1:8 22:9 65:26 98:11 123:23
we have	0:12 4:14 5:-9 6:17 8:42 9:-9 10:16 11:17 19:12 22:18 23:-12 25:8 27:-9 29:18 31:-16 33:-10 37:-9 38:-10 49:-15 50:18 65:54 70:19 84:8 97:10 98:40 104:15 123:-19
could _ have	10:14 26:18 30:17
who==	0:-10 1:11 2:-9 4:-9 5:-11 6:-12 8:-16 9:-25 10:14 11:-18 13:-27 14:131 15:133 16:-17 17:-16 18:-8 19:-9 20:-8 22:-8 23:71 25:68 26:62 27:-10 28:100 29:45 31:10 32:105 33:132 34:-12 35:-10 37:-13 38:-11 39:-12 42:-19 43:-14 45:-9 46:-10 47:-9 49:-8 52:-9 54:-9 61:-14 62:14 63:-16 86:-10 88:-8 90:-8 98:-14 100:-13 102:-15 104:-12 105:-9 106:-18 107:-10 109:-11 112:-13 113:-12 117:-9 123:25
need==s	1:17 4:-10 11:25 33:-15 37:37 41:15 43:-8 46:36 49:-9 64:-11 66:-9 73:-8 82:19 83:9 98:31 102:160 105:-10 112:9 120:24 123:24
who	0:-10 1:11 2:-9 4:-9 5:-11 6:-12 8:-16 9:-25 10:14 11:-18 13:-27 14:131 15:133 16:-17 17:-16 18:-8 19:-9 20:-8 22:-8 23:71 25:68 26:62 27:-10 28:100 29:45 31:10 32:105 33:132 34:-12 35:-10 37:-13 38:-11 39:-12 42:-19 43:-14 45:-9 46:-10 47:-9 49:-8 52:-9 54:-9 61:-14 62:14 63:-16 86:-10 88:-8 90:-8 98:-14 100:-13 102:-15 104:-12 105:-9 106:-18 107:-10 109:-11 112:-13 113:-12 117:-9 123:25
^ who	1:16 4:-8 6:-10 8:-14 9:-22 11:-13 13:-23 14:87 15:103 16:-13 17:-12 19:-12 23:65 25:50 26:45 27:-8 28:73 29:47 31:13 32:112 33:101 34:-8 35:-8 37:-11 38:-9 39:-9 42:-17 43:-13 63:-9 64:-11 86:-8 98:-13 100:-10 104:-8 106:-15 112:-10 113:-11 123:41
who need	1:18
need #d	0:22 1:21 8:-10 37:17
who _ #d	1:23 14:-13 23:33 33:20
need _ of	1:14 37:18
want==s	1:20 23:-10 30:18 37:49 46:33 55:16 68:15 80:9 82:12 84:-10 102:24 109:-10
who want	1:19
want #d	1:23 37:28
which job	1:15 9:19 11:31 12:24 23:11 29:42
job want	1:14
which _ want	1:9
job _ #d	1:22 91:28
want _ of	1:8 37:11
job need	1:8 11:24
which _ need	1:8 11:18 25:17 102:-9
want number	1:16
who _ number	1:9 23:14
want _ #n	1:19 15:-9 33:-12 37:15 47:9 64:-8 123:39
anyon==e	1:9 8:10 23:8 25:21 29:-8 33:48 35:-8 64:86 123:-8
need==	0:28 1:14 4:9 5:-8 6:53 7:52 8:-20 9:26 10:8 12:-10 13:10 17:-13 18:-10 20:14 21:-11 23:-13 25:27 26:-12 28:11 29:-23 33:41 34:12 36:-19 37:15 51:-15 52:-10 56:23 99:-14 100:-10 104:34 105:68 107:-10 109:-10 113:21 121:15 123:23
^ doe	1:36 3:28 9:10 12:14 15:12 16:-8 17:24 18:36 20:9 22:21 28:28 32:52 37:-8 88:-28 90:-10 120:-8 123:22
anyon	1:9 8:10 23:8 25:21 29:-8 33:48 35:-8 64:86 123:-8
doe anyon	1:21
anyon need	1:15
need the	0:-10 4:19 6:-9 11:-8 16:12 33:48 46:17 102:66 105:19 123:-9
doe _ need	1:25 32:13
anyon _ the	8:12
anybody==	1:34 13:-14 14:-10 15:67 17:-19 21:-9 23:37 26:11 28:53 33:22 39:-8 59:13 64:10 123:-15
want==	1:15 3:9 4:11 5:11 7:25 9:25 15:-9 16:12 20:-8 27:-10 32:-11 33:-16 47:8 50:16 64:-9 90:18 98:16 104:11 105:11 113:12 121:18 122:9 123:23
anybody	1:34 13:-14 14:-10 15:67 17:-19 21:-9 23:37 26:11 28:53 33:22 39:-8 59:13 64:10 123:-15
doe anybody	1:17 15:18
want piece	37:17
doe _ want	1:13 47:9 105:17
anybody _ piece	1:9
anybody _ #d	1:28
anybody need	1:10
need _ #n	1:10 37:9
doe any	22:27
any job	12:15
doe _ job	9:12
need #n	37:16 98:12 120:18
^ we	2:-21 4:-18 5:-12 6:-13 8:-18 9:-16 10:-15 11:-27 12:-12 13:-16 16:-10 17:-9 19:-8 22:-11 23:-16 25:-23 28:-24 29:-22 30:-14 31:-25 32:-18 35:-8 38:-9 39:24 44:-11 47:-8 48:8 49:-8 51:18 52:48 53:25 54:-10 56:12 60:-8 62:18 65:48 66:-10 69:-12 70:34 71:-8 76:23 80:-12 81:18 84:17 85:29 90:-9 94:9 96:-14 98:30 99:42 100:10 101:25 102:8 103:16 104:31 106:51 107:59 108:-12 109:-8 110:-12 111:11 117:-9 118:-30 119:61 120:-16 121:65 123:67
)~"
R"~(it go	1:18 3:11 33:9 37:24 38:-12 83:10 123:9
wher _ it	1:36 20:11 33:8 38:-15
@wire wher	50:-14 123:30
an _ mm	38:18
doe _ go	39:11
got==	4:-18 5:-8 6:-8 8:45 9:-11 11:23 12:68 13:-16 14:22 19:-12 20:-9 21:-10 22:-10 24:-8 26:32 27:-21 28:-12 29:-16 30:-10 32:-8 35:17 37:-9 38:-9 40:13 42:9 43:58 49:78 54:-9 58:8 60:12 64:14 65:-19 67:-13 69:30 70:-12 76:15 77:-9 78:-10 80:-9 81:8 93:50 97:25 98:28 99:-8 100:-10 101:17 103:-9 115:-10 116:58 118:-8 119:-12 120:10 123:-8
here==	0:-8 1:16 8:12 9:-11 14:69 15:-16 22:-8 23:-12 25:-13 26:-12 28:30 29:-28 31:-11 32:-9 33:14 34:46 38:17 41:-11 49:23 52:31 53:-8 57:51 60:-13 61:30 62:36 63:20 64:-12 65:-10 84:-8 98:-10 99:20 100:-13 104:-9 107:11 109:22 110:25 111:-10 114:8 116:79 118:-11 119:9 123:-27
^ i	0:-14 2:-31 3:-23 4:26 5:-22 7:17 10:-13 11:-27 13:-22 14:-15 16:-38 17:-46 18:-32 21:-8 22:-21 23:-10 26:-29 27:-25 28:-14 29:-20 30:-30 31:-10 32:-25 33:20 34:-14 35:26 37:-16 39:22 41:12 43:-9 45:-11 46:22 47:-9 49:-14 51:8 52:-16 53:-11 56:-8 57:-12 63:20 64:31 65:9 68:-9 71:-14 74:20 76:11 77:23 79:-11 80:13 81:-12 85:10 86:10 87:8 88:8 89:13 90:-22 92:-13 94:-8 96:8 97:10 98:11 99:19 103:-9 104:27 105:45 106:51 107:61 109:116 110:105 111:-10 112:-14 113:-11 114:20 115:14 116:-9 117:-10 118:21 121:13 123:39
got	4:-18 5:-8 6:-8 8:45 9:-11 11:23 12:68 13:-16 14:22 19:-12 20:-9 21:-10 22:-10 24:-8 26:32 27:-21 28:-12 29:-16 30:-10 32:-8 35:17 37:-9 38:-9 40:13 42:9 43:58 49:78 54:-9 58:8 60:12 64:14 65:-19 67:-13 69:30 70:-12 76:15 77:-9 78:-10 80:-9 81:8 93:50 97:25 98:28 99:-8 100:-10 101:17 103:-9 115:-10 116:58 118:-8 119:-12 120:10 123:-8
i got	69:30 71:10
got #n	49:31 65:-10 69:10 97:35 98:24
here	0:-8 1:16 8:12 9:-11 14:69 15:-16 22:-8 23:-12 25:-13 26:-12 28:30 29:-28 31:-11 32:-9 33:14 34:46 38:17 41:-11 49:23 52:31 53:-8 57:51 60:-13 61:30 62:36 63:20 64:-12 65:-10 84:-8 98:-10 99:20 100:-13 104:-9 107:11 109:22 110:25 111:-10 114:8 116:79 118:-11 119:9 123:-27
have got	98:45 123:17
we _ got	98:16
got _ #d	0:-12 1:14 35:27
got a	1:11 49:22 58:14 66:-9 86:8 94:13 97:-10 120:9
@wire here	1:12 38:14 123:20
have _ a	77:10 78:-17 115:9 123:19
of _ here	1:21
@wire _ wher	1:17
we got	4:-8 8:35 11:35 12:24 14:23 25:15 27:-16 31:17 49:36 65:-10 66:-8 116:18
have a	7:9 14:12 26:-9 29:27 38:-10 73:14 84:8 89:9 97:27 109:14 123:8
^ got	1:11 49:54 69:13 70:-9 101:21 116:43
got #d	40:12 49:22
the _ here	14:14
have _ mm	116:10
got _ #n	42:17 70:-8 81:13
shift==	2:198 13:-9 53:9 69:-9 71:-9 74:9 79:-10 96:11
slot==s	0:-50 1:-26 2:99 3:-74 4:134 5:-21 6:-10 9:-8 11:-10 13:86 15:-11 17:-19 18:97 23:-8 24:-9 27:8 29:-10 33:-25 35:-55 36:-24 40:-60 41:-26 42:52 43:38 44:-30 46:-12 47:-16 63:-16 64:-9 69:110 70:96 71:-23 72:-12 73:106 74:54 75:-19 76:-21 77:-58 79:-17 80:-22 81:72 82:-9 86:-10 87:-13 88:-22 90:30 91:-22 92:-46 94:30 96:26 102:17 103:13 104:-11 106:31 107:29 112:-13 113:-22 114:15 123:-11
shift	2:181 13:-11 17:-8 40:-16 42:-8 43:-9 44:-13 60:12 69:-13 71:-12 74:170 77:-8 79:-10 88:-14 123:-14
^ shift	2:142 13:-9 40:-9 44:-12 74:93 88:-10 123:-9
shift job	2:57 44:-10 74:21
tin ~	2:15
shift _ job	2:14 44:-8 69:-8 71:-8 74:33
job _ tin	2:15
@job _ ~	2:19 47:18 63:9 76:13 77:-8
tin _ job	2:15
open==	1:8 2:30 4:-13 5:-14 6:22 8:-31 9:20 10:-11 11:-29 12:102 13:64 14:37 16:-9 17:-11 18:-8 19:-8 22:-8 23:-12 25:-18 26:-9 27:-13 28:86 29:-31 30:-12 31:33 32:-10 33:-10 34:-11 41:-8 42:-14 44:-9 46:-11 51:83 52:69 53:132 62:-8 74:-10 77:-11 88:-8 92:-8 97:10 100:-10 104:-15 108:15 109:-17 110:-23 111:98 114:-8 116:-9 117:-12 118:11
length==s	0:-12 2:41 3:-11 4:114 8:18 22:-18 38:-22 41:-8 42:-15 44:-12 54:30 71:14 74:8 77:-10 78:21 79:100 80:-42 81:-10 87:-41 88:-8 92:-16 96:-9 119:9
open	2:20 4:-14 6:22 8:-31 9:20 10:-11 11:-31 12:100 13:63 14:37 16:-10 17:-12 18:-8 19:-8 22:-8 23:-13 25:-18 26:-11 27:-14 28:126 29:-36 30:-13 31:33 32:-11 33:-12 34:-12 41:-9 42:-14 44:-10 46:-12 51:97 52:63 53:182 54:-8 62:-8 74:-12 77:-12 88:-11 92:-8 97:10 98:-8 100:-10 104:-20 109:-18 110:-30 111:96 114:-9 116:-9 117:-14 118:11
open ~	2:29 77:-9
mm slot	2:9 40:8
#n tin	2:12
@job open	2:17
open _ job	2:14 13:16 77:-9
~ _ the	2:17 16:9 57:12 77:-9 117:9
the _ open	0:10 1:-10 28:78 97:14
job _ open	2:12 12:13
#o _ fret	16:-8 43:10 44:8 74:-10
fret _ job	2:22 3:-8 4:12 13:14 16:-23 41:-19 42:40 44:33 74:-13 92:24 94:-10 96:-13 106:22 107:9 123:32
shift @job	2:32
open _ slot	1:23
~ _ #r	117:17
#r _ the	2:11 4:-16 13:-11 18:-9 33:9 35:11 42:-11 70:9 74:18 81:21 88:-8 90:36 91:13 94:21 96:13
and _ job	3:-8 13:-8 23:103 35:-8 41:25 42:-11 44:14 70:-9 77:16 82:-13 90:-11 91:-14 92:9 113:8
@job _ job	3:35 4:-19 11:9 13:-26 18:8 23:12 24:10 27:8 40:-11 47:-11 64:9 69:-8 70:23 71:-24 74:-21 77:-22 81:-8 83:9 88:14 90:-8 91:23 93:11 95:17 106:-10 107:13 113:12
slot _ open	13:17
~ _ #d	45:-19 55:-22 84:68 120:8
length _ job	2:10 3:-27 4:9 41:22 71:10 77:28 92:-9
mm _ slot	3:9 40:17 45:10
fret==s	1:-16 2:151 3:-33 4:-17 5:33 9:-26 11:-22 12:-16 13:12 14:-8 15:-19 16:20 17:15 18:-13 19:-8 20:-9 22:-12 23:-16 24:57 25:-14 26:-10 27:65 28:-9 29:-30 30:58 32:-13 33:32 34:-18 35:-35 36:-12 37:-8 38:-16 39:-8 40:-23 41:-29 42:78 43:51 44:24 45:52 46:-13 47:-9 49:-10 53:-9 63:-12 64:-10 65:-8 68:-8 69:62 71:72 75:-10 76:-33 77:-27 78:35 79:-22 80:-12 81:8 83:-15 84:-13 86:-10 87:-13 88:-25 90:-13 91:-8 92:12 94:35 95:34 98:-12 102:32 103:43 104:-12 106:54 107:17 112:-13 113:-16 114:10 123:18
anew==	2:66 5:-8 41:-9 62:10 70:-30 77:80 94:45 101:11
and==	1:-31 3:-38 5:-22 6:-26 7:-15 8:17 10:42 11:20 13:21 14:39 15:-22 17:14 19:9 20:38 21:50 22:-31 23:56 24:-19 25:11 26:-18 27:40 28:-21 29:13 32:9 33:-25 34:14 36:-12 37:-37 38:-8 40:-32 42:15 44:11 47:-8 49:-21 50:-13 51:12 53:-23 58:18 59:-14 60:15 61:28 63:-22 64:-24 65:30 66:17 67:-9 68:-12 69:55 72:-22 73:-9 74:48 76:-20 77:-20 78:-12 80:31 81:39 82:30 83:-17 84:19 85:-21 86:-12 87:22 88:-11 89:35 90:23 91:22 94:68 95:52 96:31 97:-26 98:-17 99:-22 100:-13 102:-19 103:-11 105:-15 106:-16 107:-13 108:19 109:-14 110:-17 111:-22 112:-21 115:50 116:10 117:-13 118:-16 119:12 120:-13 123:-69
shift the	2:23
anew	2:66 5:-8 41:-9 62:10 70:-30 77:80 94:45 101:11
#n anew	2:14 70:-30 77:37
and the	0:84 2:20 16:-14 17:15 29:12 33:-13 46:-11 55:8 61:9 73:-8 74:8 76:-8 82:19 86:19 88:-9 89:22 97:12 104:28 116:12 117:-11 123:-8
the open	2:17 9:34 12:22 28:18 31:10 51:12 53:-13 118:19
open slot	2:18
shift _ fret	2:10
job _ anew	2:14 70:-30 77:37
#n _ and	0:-15 1:18 14:10 17:-12 29:22 38:10 48:-10 84:22 86:11 87:8 88:-9 90:13 98:10 113:12 116:22 117:-9 119:20 120:-8
anew _ the	2:13 101:12
and _ open	2:18
slot $	1:9 2:10 4:108 13:-22 18:24 35:16 36:-9 73:-20 90:51
fret _ @job	2:26 16:-15 17:-8 33:33 35:9 36:11 40:12 41:12 42:28 43:13 96:10 106:15 107:8
rearrang==e	2:88 13:-8 16:-8
with==	0:-18 2:23 4:-12 5:-8 8:-33 9:-17 10:9 11:19 12:-21 13:13 14:13 15:28 16:32 17:20 18:37 19:13 21:21 22:-21 23:-29 25:-19 26:-13 27:24 30:22 32:-23 33:19 36:-15 37:-22 40:-17 42:28 43:25 46:-9 47:-16 49:11 50:-9 52:-13 53:-21 55:21 56:-21 57:12 58:30 60:-17 61:-17 62:34 63:19 64:-17 65:-11 66:21 70:-15 71:15 72:31 74:-46 75:-14 78:-13 79:-14 81:17 83:-13 84:15 86:-13 87:-16 89:-23 90:-14 91:-8 94:-30 95:18 96:33 98:-13 99:14 101:-14 102:18 105:13 106:48 107:27 109:18 110:-25 111:-9 112:47 113:11 114:-12 115:26 116:-16 117:-11 119:18 120:10 121:51 123:-47
rearrang	2:88 13:-8 16:-8
^ rearrang	2:48
rearrang the	2:14
@job anew	2:42 77:17
with	0:-18 2:23 4:-12 5:-8 8:-33 9:-17 10:9 11:19 12:-21 13:13 14:13 15:28 16:32 17:20 18:37 19:13 21:21 22:-21 23:-29 25:-19 26:-13 27:24 30:22 32:-23 33:19 36:-15 37:-22 40:-17 42:28 43:25 46:-9 47:-16 49:11 50:-9 52:-13 53:-21 55:21 56:-21 57:12 58:30 60:-17 61:-17 62:34 63:19 64:-17 65:-11 66:21 70:-15 71:15 72:31 74:-46 75:-14 78:-13 79:-14 81:17 83:-13 84:15 86:-13 87:-16 89:-23 90:-14 91:-8 94:-30 95:18 96:33 98:-13 99:14 101:-14 102:18 105:13 106:48 107:27 109:18 110:-25 111:-9 112:47 113:11 114:-12 115:26 116:-16 117:-11 119:18 120:10 121:51 123:-47
with the	0:-13 1:8 2:13 4:15 7:8 8:-18 9:9 11:-11 12:-9 14:-9 15:13 16:32 17:-21 20:-9 21:20 24:8 29:-11 30:9 33:27 35:21 37:-10 39:-10 42:-18 43:42 48:9 66:10 69:-11 71:10 74:-10 76:26 85:-11 93:8 94:-10 95:-9 96:46 99:26 105:23 107:-12 118:9 123:-17
)~"
R"~(rearrang _ @job	2:11
the _ anew	2:14 77:18
@job _ with	2:14 16:-8 17:16 43:15 92:10 96:10
with _ tin	2:20 71:14
tin $	0:-36 1:23 2:17 3:-9 4:-13 7:12 8:145 9:-8 16:-12 21:-19 22:24 33:23 35:-15 37:-9 38:86 69:-10 70:-9 71:68 74:47 77:34 78:61 79:-9 80:-14 81:19 88:-8 91:-8 108:-9 123:-18
tin and	5:11
@job _ and	4:22 15:10 16:16 17:-10 27:-9 29:-10 47:9 64:-9 81:26 93:9 94:17 95:18 114:14
the _ and	11:16 17:-8 20:31 21:-14 25:9 33:-15 40:11 42:-10 45:18 46:-12 49:11 61:20 82:43 89:9 94:31
the job	0:-11 4:21 11:-17 12:23 15:-8 16:-13 24:18 29:19 35:-13 36:13 42:20 64:12 71:12 75:13 77:12 82:-13 83:21 89:-9 90:8 92:-10 94:20 106:-10 107:-9 112:37 113:28 114:18 123:-20
anew $	2:53 41:-8 94:30
@job and	3:8 23:-10 29:32 40:12 81:-8 94:22 95:8 113:17
shift _ @job	2:25 79:-10
@job with	2:14 4:24 15:18 16:14 35:15 43:12
the _ with	1:-13 4:21 6:13 7:14 8:-12 15:12 17:-8 21:17 30:8 41:10 46:11 49:9 58:17 63:19 67:11 69:24 74:-11 77:9 87:8 89:-9 96:-14 102:-8 105:25 118:11
at==	0:-16 1:-14 2:-17 3:33 6:-11 9:-23 10:23 11:14 12:31 14:46 15:-8 16:-17 17:-23 18:-22 20:-9 22:-14 23:-29 25:52 26:8 27:-28 28:-8 29:30 30:-22 31:-20 32:40 33:-20 34:-15 36:-32 37:-14 38:-25 39:-22 40:-25 41:34 42:9 44:9 45:39 48:-13 49:-11 50:38 51:15 52:17 54:-15 55:62 56:-15 57:38 58:-8 59:-8 60:23 61:-11 62:-14 63:-12 64:-18 66:11 67:8 68:-17 69:-30 70:-21 71:-19 75:115 77:41 79:-21 81:-26 83:14 85:-9 87:-11 88:33 89:-24 90:49 91:13 92:15 93:-14 94:-15 95:18 96:-12 98:-21 99:-19 100:-31 101:-11 102:26 104:29 105:-15 106:29 107:14 108:-20 110:48 111:-9 113:-21 114:61 117:-12 118:24 120:27 121:-11 122:-8
with slot	2:11 17:13 18:37 73:-13
at	0:-20 1:-20 2:-24 3:25 4:-10 6:-16 7:-8 9:-25 10:22 12:29 13:-10 14:42 15:-12 16:-23 17:-32 18:-23 20:-10 21:-8 22:-15 23:-33 25:47 27:-30 28:-18 29:30 30:-24 31:-23 32:37 33:-27 34:-16 35:10 36:-36 37:-18 38:-25 39:-24 40:-36 41:30 42:38 43:47 44:54 45:39 47:-10 48:-14 50:34 51:-9 52:48 53:14 54:-19 55:61 56:-16 57:36 58:-10 59:-10 60:20 61:-12 62:-16 63:-18 64:-21 66:10 68:-18 69:-48 71:-28 72:-18 74:-9 75:107 77:29 79:-20 81:-36 82:8 83:20 85:-12 87:-12 88:18 89:-28 90:37 91:8 93:-15 94:25 95:49 96:26 97:-9 98:-27 99:-21 101:24 102:22 104:35 105:-19 106:54 107:52 108:-24 109:-12 110:79 111:-14 112:-16 113:-27 114:74 116:40 117:-15 118:20 120:24 121:-12 122:-10 123:-21
#n at	0:-15 2:-10 3:-14 4:17 29:8 35:10 40:-15 42:21 44:19 45:29 70:-8 74:13 75:16 76:22 83:9 88:22 95:13 106:18 114:-8 123:10
at #n	2:-9 3:-16 4:-13 16:-21 17:-13 26:14 29:12 33:-8 35:-23 40:-15 41:12 42:63 43:16 44:19 45:-8 46:-10 47:-10 50:18 51:-15 52:22 53:8 67:8 69:-10 70:17 72:-13 73:-13 74:-9 75:29 76:-16 77:12 81:-14 83:26 88:21 89:-8 90:27 92:8 94:24 95:36 98:-10 100:14 101:18 103:13 104:9 107:27 109:-8 110:41 111:-12 112:-12 113:-9 114:38 115:-8 116:34 123:-33
mm and	38:8
with _ fret	27:14 107:12
fret _ at	0:12 24:20
at _ mm	3:8 40:-12 41:20 49:9 50:13 73:8 75:-13 77:44 86:21
measur==ing	3:17 40:-9 41:-9 78:17
using==	2:22 21:19 25:22 34:17 35:22 81:-8 85:20
measur	0:-30 1:-8 3:-21 4:27 17:-10 35:-11 38:-14 40:172 44:-10 48:-9 49:-8 63:-9 68:-8 70:-12 71:17 75:8 76:-11 77:-11 78:50 79:89 80:-9 88:-14 90:-9 91:35 94:-9 96:-11 116:15 123:42
#n measur	2:13 38:-8 40:21 79:-10 91:18
measur #n	40:16 74:23 88:-9 91:23
using	2:22 21:19 25:22 34:17 35:22 81:-8 85:20
using the	34:18 81:-8 85:10 123:14
shift _ #n	2:53
fret _ measur	91:20
measur _ mm	3:8 40:16 45:10 79:8 116:18
being==	2:9 13:-8 23:29 42:-28 43:12 49:10 66:-12 80:10 81:-9 98:15 106:67 107:11 112:-8 113:16 116:9
being	2:9 13:-8 23:29 42:-28 43:12 49:10 66:-12 80:10 81:-9 98:15 106:67 107:11 112:-8 113:16 116:9
#n being	2:11 23:10
mm with	73:11
with _ #n	2:9 11:-8 15:13 16:-12 29:8 33:19 49:-11 63:18 66:24 69:22 72:21 81:14 96:-17 98:10 106:49 107:13 112:17 123:-8
and _ being	2:11
#n _ with	3:-8 43:9 49:-10 66:25 71:15 92:14 96:11 98:13
#r at	104:21
at #d	0:-8 2:20 3:69 17:-9 35:-11 41:44 45:-9 49:-12 50:33 73:9 74:23 75:-23 77:55 79:-12 91:-16 123:-8
slot _ at	0:-9 4:20 77:8
#r _ #d	3:10
#d _ and	2:10 73:8 80:9 87:15
in and	18:9 20:46 21:-18 95:11
at _ in	8:22 42:18 50:11 57:15 75:-12 77:21 104:8 123:-8
measur #d	2:15 40:58 71:10 79:16 91:-11 116:18
measur _ in	40:15
being #d	2:9
#n with	3:13 15:24 16:26 17:-14 18:25 40:9 43:-15 44:17 72:10 81:16 93:10 94:-15 100:8
job _ with	15:16 16:29 17:-13 18:26 40:9 43:-15 44:20 72:11 93:10 94:-15
how==	0:-19 1:-17 2:69 3:-13 4:65 5:87 6:22 8:96 9:59 10:-13 11:14 13:91 14:19 15:-23 16:114 19:27 20:25 21:46 22:-18 23:9 24:75 25:68 26:-14 27:99 29:58 30:-21 31:-14 32:72 33:-15 34:99 35:-9 37:-8 38:-12 39:-9 40:-10 41:-15 42:-16 43:-30 44:-11 46:-10 47:-12 49:-12 50:-15 52:-8 54:-12 56:-9 57:-10 63:-14 64:-16 65:-21 66:-9 68:-10 70:-9 71:-9 74:-14 75:-11 76:-13 80:-9 82:-10 85:-8 86:-12 87:-10 88:-19 90:-13 91:9 92:-13 93:-17 94:-10 96:-8 97:-10 98:-13 99:-10 100:-11 101:-11 102:-16 103:-17 104:-8 105:-9 106:-21 107:-16 109:-10 111:-8 112:-14 113:-12 114:-8 116:-8 117:-10 118:-9 120:-9 122:-21 123:-10
how	0:-19 1:-17 2:69 3:-13 4:65 5:87 6:22 8:96 9:59 10:-13 11:14 13:91 14:19 15:-23 16:114 19:27 20:25 21:46 22:-18 23:9 24:75 25:68 26:-14 27:99 29:58 30:-21 31:-14 32:72 33:-15 34:99 35:-9 37:-8 38:-12 39:-9 40:-10 41:-15 42:-16 43:-30 44:-11 46:-10 47:-12 49:-12 50:-15 52:-8 54:-12 56:-9 57:-10 63:-14 64:-16 65:-21 66:-9 68:-10 70:-9 71:-9 74:-14 75:-11 76:-13 80:-9 82:-10 85:-8 86:-12 87:-10 88:-19 90:-13 91:9 92:-13 93:-17 94:-10 96:-8 97:-10 98:-13 99:-10 100:-11 101:-11 102:-16 103:-17 104:-8 105:-9 106:-21 107:-16 109:-10 111:-8 112:-14 113:-12 114:-8 116:-8 117:-10 118:-9 120:-9 122:-21 123:-10
^ how	0:-11 1:-10 2:22 4:28 5:63 6:28 8:34 9:47 10:-10 11:24 13:29 14:18 15:-16 16:55 17:20 19:13 20:12 21:55 22:-13 23:17 24:75 25:54 26:-10 27:86 29:56 32:26 33:-10 34:32 42:-12 50:-11 54:-9 63:-9 64:-10 65:-16 86:-8 87:-8 88:-13 90:-10 92:-9 93:-14 98:-10 99:-8 102:-14 103:-13 106:-17 107:-11 112:-11 113:-9 117:-8 123:-13
how can	2:39 16:21 34:-9
we rearrang	2:18
rearrang job	2:37
how _ we	2:27 5:22 6:-16 8:30 9:-20 13:9 16:28 41:-8
we _ job	2:15 6:12 16:20 123:-13
rearrang _ #n	2:37
can _ the	67:11 89:16 99:13 100:10
can _ job	2:18
lay==	2:78 14:15 16:-11 17:23 41:-8
lay	2:78 14:15 16:-11 17:23 41:-8
i lay	14:16 16:-9 17:22
lay the	2:10 16:-9 17:25
how _ i	2:25 5:53 6:-25 16:24 17:-8 24:-9 34:64
lay _ fret	2:11
how do	2:41 5:30 6:-19 9:-8 16:23 24:-9 34:68 41:-10
we shift	2:9
how should	5:57 6:-15
i shift	2:16 74:9
i _ job	11:26 16:18 17:-12 29:26 30:12 86:21 106:-12 123:-10
do _ rearrang	2:9
what fret	2:36 16:31 17:-8 24:11 27:-11 33:-8
@job can	2:12 3:11 42:20 112:46
what _ of	2:10 8:17 19:30 20:13 22:-17 23:9 24:15 27:10 34:9
the _ can	0:8 42:20 101:12
@job _ i	13:18 15:8 17:10 107:12
can _ shift	2:13
shift $	2:22 74:41
move==	2:92 11:-13 16:-10 17:-13 30:9 46:22 61:15 90:9 114:8
which fret	0:-13 2:14 5:11 13:32 17:40 24:44 33:41 96:-8
move	2:92 11:-13 16:-10 17:-13 30:9 46:22 61:15 90:9 114:8
we move	2:10
which _ of	1:-14 4:-8 5:8 13:57 15:22 19:25 22:25
@job _ we	2:9 47:22 123:15
can _ move	2:17 123:-10
move $	2:16
of _ do	3:10 123:-10
do _ move	2:47 16:-9 17:-9
can move	2:14
of _ can	2:8 3:11 5:15 34:13
shift of	2:9
fret _ we	106:27
we _ of	8:42 9:8
shift _ the	2:15
i move	2:54 16:-8 17:-9 123:-10
move on	2:15 46:16
what _ do	2:21 4:39 9:-8 10:9 11:10 12:15 17:-10 24:9 25:10 29:-11 33:-11
move _ job	2:23
move of	2:13
i _ of	2:15 6:9
move _ the	46:16
which _ can	0:-11 1:-8 2:11 18:9 32:11
can _ in	2:8 30:8 80:27
all==	0:-12 1:-22 2:-15 3:63 4:29 5:25 6:-37 7:-9 8:22 9:12 13:16 14:32 15:-20 16:61 17:20 18:-16 19:62 20:37 22:-20 23:51 24:-35 25:12 26:10 27:-14 29:12 30:-13 33:23 34:33 35:-17 36:-30 37:-31 38:-17 39:-17 40:-21 41:-20 42:74 43:51 44:98 46:-11 49:16 50:-13 53:-23 54:-17 56:-17 57:-13 58:-9 60:-11 61:-14 62:-12 63:-16 64:-14 65:41 66:8 67:-15 68:21 70:26 73:-16 75:-11 76:-17 77:-20 78:-13 80:46 82:118 83:118 85:-8 87:-14 88:-11 90:-29 91:-12 92:-15 93:-14 94:-14 95:-12 96:-22 97:-13 98:-10 100:37 101:-15 102:-8 103:-11 104:21 105:-18 106:-28 107:-33 108:-17 109:-15 110:32 111:48 112:-10 113:-23 114:-28 115:-12 116:11 117:-14 118:-13 119:-10 120:-11 121:-11 122:-15 123:-18
)~"
R"~(right==	0:16 1:-10 3:95 4:-11 13:-9 14:-8 16:8 17:-13 18:53 23:-13 25:20 40:-14 41:-21 43:17 47:11 73:-8 76:37 77:-9 89:11 90:-12 102:-8 104:18 123:56
side==	2:-9 3:64 4:-9 13:-18 16:72 17:57 23:17 36:24 40:-13 41:-21 43:-12 44:32 47:-9 77:-8 82:14 88:77 90:-8 113:-11 123:-10
all	0:-12 1:-22 2:-15 3:63 4:29 5:25 6:-37 7:-9 8:22 9:12 13:16 14:32 15:-20 16:61 17:20 18:-16 19:62 20:37 22:-20 23:51 24:-35 25:12 26:10 27:-14 29:12 30:-13 33:23 34:33 35:-17 36:-30 37:-31 38:-17 39:-17 40:-21 41:-20 42:74 43:51 44:98 46:-11 49:16 50:-13 53:-23 54:-17 56:-17 57:-13 58:-9 60:-11 61:-14 62:-12 63:-16 64:-14 65:41 66:8 67:-15 68:21 70:26 73:-16 75:-11 76:-17 77:-20 78:-13 80:46 82:118 83:118 85:-8 87:-14 88:-11 90:-29 91:-12 92:-15 93:-14 94:-14 95:-12 96:-22 97:-13 98:-10 100:37 101:-15 102:-8 103:-11 104:21 105:-18 106:-28 107:-33 108:-17 109:-15 110:32 111:48 112:-10 113:-23 114:-28 115:-12 116:11 117:-14 118:-13 119:-10 120:-11 121:-11 122:-15 123:-18
^ all	2:-9 3:75 5:-14 12:20 13:-8 19:33 23:58 29:-8 32:15 33:-8 34:19 40:-10 41:-20 42:50 43:51 44:21 70:11 77:-8 80:12 81:12 83:50 88:-12 90:-10 96:-10 123:-24
right	0:16 1:-10 3:95 4:-11 13:-9 14:-8 16:8 17:-13 18:53 23:-13 25:20 40:-14 41:-21 43:17 47:11 73:-8 76:37 77:-9 89:11 90:-12 102:-8 104:18 123:56
all right	3:105 16:17 18:8 25:12 40:-13 41:-20 77:-8
right job	3:39 41:-15
#r length	41:12
#n one	3:28 41:-10
side	2:-9 3:64 4:-9 13:-18 16:72 17:57 23:17 36:24 40:-13 41:-21 43:-12 44:32 47:-9 77:-8 82:14 88:77 90:-8 113:-11 123:-10
one side	3:49 40:-8 41:-20
side ~	3:49 40:-8 41:-20
all _ job	3:37 40:-8 41:-15 42:9 82:24 123:14
right _ job	3:17 18:21
job _ one	3:28 41:-10
#n _ side	3:28 41:-10
one _ ~	3:49 39:-9 40:-8 41:-20 80:17
@job end	3:19 40:-10 92:23
raw	1:18 2:-9 3:36 38:26 40:-10 77:11 79:8 92:-11
end raw	1:8 2:-9 3:37 38:8 40:-10 41:-10 77:12 79:8 92:-11
raw job	3:14 41:-10 77:9
mm end	3:10
#n end	1:10 2:-8 3:46 27:8 35:-10 40:-11 76:-8 77:8 90:-11
raw length	3:9
right _ the	3:9 18:9
job _ end	3:27 40:-15 41:10 77:13 90:-8
@job _ raw	3:9
end _ job	3:42 41:-12 92:-8 113:13
raw _ job	3:14 41:-10 77:9
side _ job	3:10 17:25
#n _ end	1:10 3:9 38:9 78:11
mm _ raw	3:10
and _ end	3:21 41:-10
#n _ one_raw	3:24 41:-9
#n _ raw	2:-8 38:8 77:12 79:8
end _ length	3:9
raw _ #d	3:9
dress	1:67 3:60 4:-8 16:-9 25:-12 27:9 33:-8 35:-16 38:46 41:30 42:64 44:-11 49:-17 54:46 56:39 74:-11 76:-9 77:9 79:-17 88:-11 90:-16 91:-13 102:45 103:17 106:43 107:20 123:-14
end dress	3:26 41:21 42:21 90:-10
dress job	3:18
all _ the	3:13 11:12 42:19 52:9 70:-9 80:14 116:12
right _ @job	3:13 18:21
slot _ end	3:8
#n _ dress	3:19 13:15 90:-8
dress _ @job	3:13
dress $	1:30 3:8 38:32 41:18 106:49
#d one	3:11 39:-8 80:14
side _ slot	3:11
~ _ fret	3:10
the _ end	1:8 9:9 35:9 40:-8 41:21 42:22 68:26 70:-8 71:-8 75:17 86:-8 88:8 92:22
@job _ dress	3:11
dress _ job	41:8 42:15 107:17
~ $	1:-9 5:-8 8:-12 9:-14 10:-8 11:-12 13:-11 14:-10 17:-9 19:-9 20:-10 21:-8 22:-10 23:-10 25:-19 26:-13 27:-11 28:-15 29:-24 32:57 33:-11 34:23 37:-9 39:13 41:-10 47:10 48:86 52:36 54:119 55:57 56:65 57:44 59:-8 60:49 61:-14 62:-12 64:-8 68:30 76:30 80:13 81:-10 84:-9 85:54 86:-9 90:-11 91:-8 97:73 98:52 99:-23 100:36 101:-11 102:-8 105:-12 107:-18 108:-11 109:28 110:-12 111:-20 112:-8 117:-13 118:32 119:58 120:-38 121:71 123:-34
alright==	3:31
is a	3:8 13:-8 25:29 27:17 29:-12 30:-20 36:8 38:19 40:-10 52:61 56:15 60:12 69:-10 78:17 88:20 91:-9 103:22 107:-9 109:-18 112:17 120:15
alright	3:31
alright for	3:23
is _ #d	0:-8 1:-14 3:22 23:35 37:-9 39:-17 41:16 46:15 50:26 65:10 68:38 75:10 87:10
fret _ for	0:10 4:18 69:10 81:-10
alright _ slot	3:23
right for	18:49 23:-10 35:11 122:9
in _ all	19:9 47:17 109:13
all _ for	3:10 16:21 18:8
right _ slot	3:13 35:11
enough==	0:-15 3:48 6:41 8:-27 9:76 13:-11 17:40 25:-8 29:9 40:-10 67:8 76:-8 85:-13 90:22 98:30 107:13 123:21
enough	0:-15 3:48 6:41 8:-27 9:76 13:-11 17:40 25:-8 29:9 40:-10 67:8 76:-8 85:-13 90:22 98:30 107:13 123:21
long enough	3:34 17:-8 40:-9
enough for	3:13 6:9 18:12
#o of	0:-8 2:-10 3:15 4:11 5:-10 6:-8 11:12 13:-10 16:-9 17:-9 20:30 21:28 25:-8 26:25 27:-9 28:10 29:14 30:31 33:21 40:12 42:-21 43:-15 44:-9 46:28 52:18 53:28 69:24 70:19 77:9 86:-15 89:18 90:13 94:12 96:18 106:-11 107:-10 110:23 111:14 117:33 123:-8
is _ fret	3:16 4:17 17:-12 27:-9 40:-13 42:23 76:11 91:10
#d _ long	40:17
enough _ slot	3:13
ok==	3:30 25:11 30:26 123:102
is the	0:-11 1:-11 2:9 3:16 4:41 5:-9 8:-9 9:76 12:-11 13:103 15:14 17:-14 18:56 19:38 21:35 22:-20 23:10 25:64 26:-23 27:10 28:38 29:48 30:50 31:9 32:32 33:-16 34:31 35:-9 36:-8 37:-8 39:-9 40:-15 44:-17 46:-8 47:-10 50:-15 52:-22 59:-10 63:-9 75:12 82:-8 84:-9 85:-16 86:-17 87:-12 90:-12 92:31 93:-41 100:-10 101:-11 102:-13 105:-9 106:-11 111:-9 113:-11 120:-8 123:-23
ok	3:30 25:11 30:26 123:102
ok for	3:21
#d _ ok	3:18
in _ for	3:18
ok _ slot	3:21
is _ in	3:-9 11:8 28:49 35:22 40:15 42:16 75:13 79:15 86:-13 87:14 90:15 91:40 95:9 109:-12 123:-8
in all	65:25
#d _ all	65:37
is _ mm	8:36 40:34 45:10 48:-11 68:10 75:22 76:-10 84:18 87:30 91:8 120:10
my==	0:-8 9:-11 11:-11 12:42 13:36 14:-8 17:-9 20:-10 25:-16 26:24 28:33 29:29 33:22 34:-13 37:17 44:25 48:-20 49:-8 57:14 63:16 65:17 80:8 82:9 87:18 93:-18 94:-13 100:-8 105:37 106:-8 109:13 110:18 122:74 123:13
^ will	0:-14 3:33 9:24 18:31 28:36 29:22 109:-10 123:-25
my	0:-8 9:-11 11:-11 12:42 13:36 14:-8 17:-9 20:-10 25:-16 26:24 28:33 29:29 33:22 34:-13 37:17 44:25 48:-20 49:-8 57:14 63:16 65:17 80:8 82:9 87:18 93:-18 94:-13 100:-8 105:37 106:-8 109:13 110:18 122:74 123:13
mm do	3:15
will _ #n	6:14 29:32 98:-13 123:31
#n _ do	0:-15 1:-9 3:33 4:-8 30:15 37:-15 39:14 123:24
mm _ for	3:8
will a	3:12 123:-11
#d _ do	3:21
do in	3:30 123:-11
in _ do	3:10
mm _ in	87:12
will the	5:39 9:32 18:11 29:23 31:8
can #n	0:15 34:10
mine==	0:-8 3:63 11:-12 12:79 13:-24 15:56 17:-12 26:41 60:-20 61:-8 63:105 64:-8 68:15 100:-8 104:29 112:-12 123:-16
mine	0:-8 3:63 11:-12 12:79 13:-24 15:56 17:-12 26:41 60:-20 61:-8 63:105 64:-8 68:15 100:-8 104:29 112:-12 123:-16
^ mine	3:70 12:27 26:11
mine is	3:70
is #n	1:-8 17:32 40:61 42:-12 44:-13 45:15 49:8 51:19 52:8 62:9 64:-9 65:-8 66:16 67:28 74:-9 75:13 76:-14 84:30 86:-8 87:15 88:-36 90:-16 91:23 97:29 98:33 112:10 120:18 123:-25
mm is	40:-10 67:14 91:9
is it	0:-15 1:28 3:13 8:29 11:16 16:20 17:28 18:10 34:20 40:-8 76:-11 88:-10 90:-13 92:27 107:18 123:-14
#n _ is	0:-12 1:21 17:24 35:26 67:17 68:-12 90:12 111:21 123:28
mm _ it	40:15
it _ for	11:23 18:29 34:12 36:55 46:-8
measure==s	40:39 75:34 76:-9 79:14 87:33 88:-8 91:-9 123:43
^ it	1:-11 3:10 17:-11 25:-8 43:22 49:12 57:8 66:-8 72:9 76:-14 88:66 90:90 91:31 92:17 93:53 113:19 114:10
measure	40:39 75:34 76:-9 79:14 87:33 88:-8 91:-9 123:43
it measure	3:10
measure #d	40:53 75:34 87:24
it all	20:8 82:25
it _ #d	40:13 67:9 75:9 76:-9 77:21 91:25
measure _ in	40:8
#d _ is	3:8 40:-10 66:-8 67:16 80:30 91:9
is _ all	13:15 18:9 25:12
it is	1:11 3:-18 4:-8 5:-10 8:-12 9:-13 13:-14 15:-12 17:-27 18:-13 23:-20 25:-15 26:-8 28:-8 30:-8 31:-8 35:24 36:23 37:9 38:16 39:-13 40:36 42:-12 43:20 46:-10 47:-14 49:-9 50:22 51:20 54:-11 56:21 57:-8 58:11 66:8 71:-11 76:28 82:-8 84:25 86:10 90:57 91:29 92:14 93:26 94:8 100:16 101:12 105:-10 107:-9 109:-8 113:28 114:8 122:-20 123:31
is that	3:37 8:-13 9:-8 13:20 18:10 24:55 31:18 52:11 91:-13 111:-8
that alright	3:8
that _ for	27:9 54:10 83:10 118:13
#d is	37:46 39:25 123:-15
mine _ #d	3:66
is _ is	11:9 23:-9 88:40
#d _ that	3:17
measure #n	79:15 87:9
mm that	3:9
it _ #n	40:20 44:8 51:22 84:21 88:-13 91:17 94:-12 97:10 114:28 119:-8
measure _ mm	40:11 87:12
#n _ that	0:37 3:12 35:15 42:9 52:10 66:10 70:10 74:-11 92:30
^ #d	0:22 3:28 8:-11 18:10 35:17 37:27 38:15 39:32 40:-12 52:31 65:17 66:-15 67:22 123:-13
in for	12:36 109:11
@job all	13:15 44:11
right $	3:34 16:16 25:10 33:-11 43:18 68:19 89:8 123:48
mm for	3:57 40:16 41:-17
^ #n	0:-38 1:9 2:10 3:39 4:50 5:25 11:-10 13:53 17:-12 18:-11 22:-18 23:-10 24:-9 27:-13 29:-16 30:17 31:-11 32:-8 33:11 35:-19 36:-13 37:-12 39:41 40:14 41:41 42:-21 43:-20 44:20 45:-8 46:-11 47:-9 49:100 50:-11 51:-9 52:-8 53:-13 54:-8 64:-9 66:-12 67:23 68:9 69:-25 70:-16 71:10 74:-12 76:14 77:-13 78:14 79:-28 80:14 81:39 86:-11 88:146 89:21 90:-21 92:33 94:46 95:12 97:-10 103:-11 106:-13 107:-10 110:-14 112:-12 114:-10 116:34 117:-10 120:-9 123:-30
)~"
R"~(#n all	3:12 13:37 33:25 42:-8
job _ all	3:12 13:37 33:25 42:-8
#n _ right	3:14
#d for	0:-28 3:29 36:32 40:17 123:28
ok $	3:9 25:11 30:26 123:103
^ slot	0:18 1:-11 2:-8 3:-26 4:131 13:-27 18:-17 33:-17 35:17 36:-9 40:-14 41:19 42:48 69:-29 70:46 73:81 75:-16 77:21 90:51 94:-8 103:13 106:-10 123:-14
slot job	4:46 13:-13
show==	4:54 5:17 6:11 7:15 8:59 10:29 12:58 13:44 14:33 16:43 17:16 19:13 20:12 21:-10 22:-14 23:9 25:28 26:9 28:10 29:16 31:16 32:21 33:28 34:31 42:-11 82:-13 83:-8 106:-9 107:-9 109:-12 112:-8 121:-10 123:-21
show	4:54 5:17 6:11 7:15 8:58 10:29 12:51 13:43 14:45 16:42 17:13 19:13 20:8 21:-10 22:-14 23:9 25:28 26:9 28:9 29:14 31:16 32:21 33:27 34:31 38:-8 42:-11 47:-8 49:-9 58:9 64:-8 66:31 82:-13 83:-9 88:-12 90:-8 99:-8 106:-9 107:-9 108:-9 109:-12 112:-8 116:-10 121:-10 123:-22
^ show	4:56 5:19 6:13 7:16 8:61 10:31 12:59 13:45 14:34 16:46 17:14 19:14 20:-10 21:-9 22:-14 23:-10 25:16 26:10 29:20 31:17 32:22 33:32 34:21 42:-10 106:-8 109:-9 112:-8 121:-10 123:-20
show me	0:8 4:43 7:12 8:14 10:24 16:35 17:9 29:10 31:-8 33:29 34:14
me slot	4:37 13:-13
slot of	0:-9 2:-9 3:17 4:41 13:19 18:47 33:-8 35:14 40:-9 42:11 69:-11 70:-9 71:-10 73:59 87:-10 103:14 105:11 106:21 107:10
show _ slot	4:37 13:-13
me _ of	10:8 16:43 34:9
slot _ @job	0:-12 1:18 4:8 13:13 73:53
me the	4:44 6:28 8:40 9:12 10:27 17:29 26:14 29:10 33:-10 123:19
show _ the	4:20 6:18 8:25 10:12 17:10 20:22 33:-8 89:11
me _ slot	1:8 4:60
me _ for	0:14 104:15 122:9
list==	4:22 5:-10 6:121 7:-13 8:29 9:9 10:147 11:-12 12:57 13:-20 14:55 16:26 18:-9 19:30 20:-17 21:-8 22:10 23:40 26:8 27:13 30:-9 32:22 33:-16 34:66 37:-9 39:-8 42:-18 46:-11 47:14 53:-8 54:-10 56:10 64:-13 69:-8 77:-8 81:-12 82:-14 83:-15 86:-11 90:-8 97:11 98:-9 99:39 100:-9 102:-13 105:-9 106:-13 107:-15 109:-8 115:-8 116:-14 117:-12 118:-10 119:14 120:-10 121:11 123:-19
list	4:22 5:-10 6:121 7:-13 8:29 9:9 10:147 11:-12 12:57 13:-20 14:55 16:26 18:-9 19:30 20:-17 21:-8 22:10 23:40 26:8 27:13 30:-9 32:22 33:-16 34:66 37:-9 39:-8 42:-18 46:-11 47:14 53:-8 54:-10 56:10 64:-13 69:-8 77:-8 81:-12 82:-14 83:-15 86:-11 90:-8 97:11 98:-9 99:39 100:-9 102:-13 105:-9 106:-13 107:-15 109:-8 115:-8 116:-14 117:-12 118:-10 119:14 120:-10 121:11 123:-19
^ list	4:12 8:51 9:-11 10:-21 12:21 16:23 19:21 23:20 25:8 26:23 27:25 29:-9 31:20 32:33 34:34 82:-8 83:-10 121:-11
list _ of	4:15
show slot	4:25
show _ of	4:9
slot on	0:48 1:15 2:-12 4:-14 13:32 33:-8 42:17 73:20 90:-11 105:18 107:10
the _ on	1:-18 2:22 3:-12 5:-9 6:19 8:-9 11:24 12:-8 13:-35 15:-15 16:-9 17:19 18:19 24:-11 25:-11 26:32 27:26 28:-13 29:-9 33:9 34:-8 37:33 39:-11 43:14 44:-16 49:13 52:-18 56:12 63:-13 64:-8 71:-10 73:-13 74:21 76:27 77:19 83:32 86:-11 87:29 88:-15 90:-11 91:21 92:12 93:8 94:24 99:-11 102:-10 104:32 106:-14 109:-8 110:-10 111:42 113:36
me _ on	4:9
tabl==e	4:81 14:22 16:23 17:54 24:14 42:-8 56:77 57:9 83:-9 97:20 123:-10
tabl	4:81 14:22 16:23 17:54 24:14 42:-8 56:77 57:9 83:-9 97:20 123:-10
slot tabl	0:-12 4:74
tabl of	0:9 4:38 16:19
tabl _ the	17:28
tabl _ job	4:27
^ the	0:-48 1:-24 2:-32 3:-29 4:-16 5:-21 6:45 7:-16 9:-22 10:8 12:-18 13:56 15:-17 16:-29 17:-36 18:-45 19:-22 20:35 21:-24 22:-31 23:-40 25:-25 26:-31 27:-27 28:-23 29:27 33:31 34:-24 35:-37 36:-13 37:-10 38:-18 39:25 40:21 41:23 42:33 44:23 46:28 47:19 48:-16 50:25 52:10 54:53 56:-8 57:-15 58:18 60:-21 63:60 64:8 65:10 66:35 67:-35 68:12 69:30 70:-14 72:29 73:34 74:-33 75:44 76:31 78:-21 79:30 80:-27 81:-23 82:-25 83:-19 84:22 85:14 86:31 87:33 88:-21 89:-30 91:-20 92:24 93:20 95:-9 96:-23 98:50 99:14 100:19 101:55 102:-34 104:-29 105:15 106:-24 107:-24 108:10 109:-30 111:51 112:55 115:-16 116:80 117:63 118:39 119:-12 120:40 122:19 123:38
tabl for	4:19 17:28
the _ tabl	4:17
slot _ for	0:-20 1:8 4:75 69:11 70:-11 77:8
tabl _ @job	4:10 17:26
the _ the	4:47 9:-9 19:19 27:-10 39:12 42:9 44:17 50:17 71:12 89:11 90:-9 94:9
the _ #r	33:15 89:11 117:9
me _ #n	13:19 34:30 36:21 67:11 69:38 74:-8 123:-12
how long	2:-11 4:94 5:-19 8:-16 9:42 11:44 13:-23 16:-22 17:-9 27:107 29:-9 30:-11 32:74 34:-15
long is	4:65 9:9 13:-10 27:-14 67:14 85:12
how _ is	4:59 8:27 13:-47 16:-16 17:40 21:-10 23:11 24:49 25:-13 27:19 32:39 123:-9
long _ the	4:61 5:-11 9:14 40:25 85:19
fret _ and	3:-10 4:11 16:9 35:-15 41:11 44:-13 69:15 74:-9 76:46 77:12 81:29 88:-25 89:8 90:20 91:-10 95:-12 96:9 114:9
and _ on	1:9 4:12 69:8 88:-9 90:22 95:9 96:15
be==	0:9 1:14 2:34 3:19 4:30 5:12 6:-12 10:25 11:27 12:-8 13:-48 14:-15 19:-13 20:-13 21:-9 22:9 23:-35 25:-22 26:-9 28:23 29:39 30:25 31:-16 32:11 33:-25 34:-15 35:-18 36:17 38:-10 40:-14 41:-8 43:-29 44:-20 46:24 47:25 49:-10 50:28 53:-12 54:25 57:14 59:13 61:-9 64:12 65:-17 66:-9 67:-8 68:19 69:-11 71:-13 74:-14 75:-9 77:-9 78:-8 79:-23 80:15 82:19 83:-14 84:-8 85:21 86:-16 88:-14 89:-9 91:-12 92:11 93:-10 94:-17 95:-8 96:-11 97:27 98:10 100:48 101:9 102:-12 103:25 104:-18 105:54 106:-13 107:-15 108:-13 110:21 111:12 112:-8 113:16 114:13 116:-18 117:22 120:-12 121:31 122:-8 123:37
be	0:9 1:14 2:34 3:19 4:30 5:12 6:-12 10:25 11:27 12:-8 13:-48 14:-15 19:-13 20:-13 21:-9 22:9 23:-35 25:-22 26:-9 28:23 29:39 30:25 31:-16 32:11 33:-25 34:-15 35:-18 36:17 38:-10 40:-14 41:-8 43:-29 44:-20 46:24 47:25 49:-10 50:28 53:-12 54:25 57:14 59:13 61:-9 64:12 65:-17 66:-9 67:-8 68:19 69:-11 71:-13 74:-14 75:-9 77:-9 78:-8 79:-23 80:15 82:19 83:-14 84:-8 85:21 86:-16 88:-14 89:-9 91:-12 92:11 93:-10 94:-17 95:-8 96:-11 97:27 98:10 100:48 101:9 102:-12 103:25 104:-18 105:54 106:-13 107:-15 108:-13 110:21 111:12 112:-8 113:16 114:13 116:-18 117:22 120:-12 121:31 122:-8 123:37
#n be	3:15 4:11 17:10 30:32 40:-8 43:-10 72:10 123:12
job _ be	3:16 4:11 16:8 17:10 30:44 40:-8 43:-10 72:10 123:-28
be $	4:20
is fret	3:23 4:17 17:85 27:-9 35:-10 40:-11 69:8 72:22 76:-9 88:-12 123:-8
long _ fret	4:37 27:-16
is _ #r	4:11 104:15 110:24
long are	4:15 27:-14
how _ are	4:14 25:-23 28:16 29:39
are _ fret	0:12 4:13 27:-11
#o for	46:9
@job be	5:-8 18:24 29:48 63:14 114:16
is _ the	4:12 8:60 11:-12 12:14 14:43 22:-17 26:17 28:-27 29:12 33:17 39:13 40:-9 42:-12 72:10 74:13 80:25 102:-10 106:30 110:8 123:-14
the _ be	27:14 29:11 114:17
fret slot	0:-15 16:9 41:13 74:8 76:13 77:21 92:-9 94:25 95:19
is _ slot	74:35 123:17
fret the	41:13 44:11 77:9 88:8 90:10 94:10 96:12
#o on	12:22 17:-8 69:11 75:-9 76:36 77:24 91:26 92:10 94:33
fret _ #o	41:13 44:11 77:9 88:8 90:10 94:10 96:12
cut==s	5:70 6:56 13:-9 14:14
cut	3:-20 4:-26 5:253 6:219 7:-12 8:-19 10:-17 11:-20 12:-21 13:21 15:-14 16:-30 17:-29 18:-19 19:-11 22:-12 23:-20 25:-11 26:-11 27:14 28:-8 29:-34 30:-15 31:-15 32:-21 35:-21 36:-11 37:-8 39:-12 40:-8 41:23 42:119 43:-14 44:-21 46:-11 47:-10 48:-8 49:-14 56:9 63:-11 64:-10 67:12 68:12 69:108 70:151 71:-20 72:-9 73:15 74:-16 76:-14 77:46 81:-31 82:-17 83:-13 86:-15 88:-14 89:-8 90:-19 92:-11 94:-10 95:-8 96:-14 98:-13 102:14 103:30 104:-11 105:-9 106:32 107:10 112:-14 113:-9 114:-8 123:-10
^ cut	1:-9 3:-9 4:-8 5:27 6:13 9:18 13:-9 30:-8 31:-11 34:30 35:-17 41:8 42:52 44:-8 56:13 69:117 77:31 98:-10 102:24 103:29 123:19
cut $	5:62 6:-26 13:26 42:30 70:36 106:18 107:9
only==	0:-19 1:95 2:24 3:23 4:59 5:68 8:-21 9:-13 12:-8 13:-20 15:-10 16:13 17:20 18:-13 19:-9 20:-12 21:33 22:38 23:-11 24:-9 28:-15 29:-18 31:-11 32:-10 33:15 34:-8 35:-8 37:-13 39:-10 40:-14 41:15 42:-18 43:48 44:40 46:-9 47:-11 49:-11 51:-33 53:57 54:-16 57:40 59:-9 60:9 62:-8 63:-11 64:-14 65:41 68:26 72:12 74:-22 76:-12 80:-8 84:8 86:-12 88:-27 90:-9 97:-9 98:16 100:-13 103:-9 104:-15 106:-21 107:-13 108:-15 109:-19 110:75 112:-9 113:24 117:20 119:-8 120:25 123:-27
only	0:-19 1:95 2:24 3:23 4:59 5:68 8:-21 9:-13 12:-8 13:-20 15:-10 16:13 17:20 18:-13 19:-9 20:-12 21:33 22:38 23:-11 24:-9 28:-15 29:-18 31:-11 32:-10 33:15 34:-8 35:-8 37:-13 39:-10 40:-14 41:15 42:-18 43:48 44:40 46:-9 47:-11 49:-11 51:-33 53:57 54:-16 57:40 59:-9 60:9 62:-8 63:-11 64:-14 65:41 68:26 72:12 74:-22 76:-12 80:-8 84:8 86:-12 88:-27 90:-9 97:-9 98:16 100:-13 103:-9 104:-15 106:-21 107:-13 108:-15 109:-19 110:75 112:-9 113:24 117:20 119:-8 120:25 123:-27
tin only	5:48 21:-10
)~"
R"~(only ~	53:15 110:-14
stick==s	0:-8 1:-11 5:14 6:33 8:57 9:-24 10:-9 20:-11 22:-14 27:-8 31:17 32:-12 38:-23 48:18 49:72 50:-8 65:84 66:61 67:-24 78:-14 81:-9 87:-19 115:32 116:52 117:-22 118:-10 119:35 120:41 123:35
cut @wire	5:10
@wire stick	8:15 9:-8 38:10 49:49 66:44 67:-9 115:40 116:-27
stick #n	2:-8 48:18 49:-23 65:22 69:-23 70:82
cut _ wire	0:13
the _ tin	21:11 54:20
@job _ only	3:20 113:12
the _ stick	31:32 37:17 66:10 69:17 70:21 81:-11 115:14 116:-13 123:13
wire _ stick	49:-16 65:16
wire _ job	6:26 42:18 70:19 72:12 73:-11 75:-10 106:19
#n _ only	3:15 53:9 68:20
cut the	2:-11 5:40 6:12 33:17 41:32 69:18 70:37 81:-13
cut _ @wire	6:36
@wire _ only	1:-9 38:11 87:12
only _ job	17:33 113:23 123:-11
cut==	3:-19 4:-29 5:121 6:141 8:-12 9:-15 10:-10 11:-14 12:-16 13:40 15:-11 16:-17 17:-23 18:-14 20:12 22:-8 23:-13 27:-11 29:-12 33:14 34:17 35:-31 41:29 42:91 43:-10 44:-18 46:-8 49:-8 56:13 59:9 65:-9 67:14 68:14 69:117 70:159 71:-11 73:16 74:-15 76:-12 77:48 81:-30 82:-13 83:-9 86:-11 88:-12 90:-16 94:-8 96:-9 107:-11 112:-11 123:-31
plan==	2:47 5:107 6:-23 13:-10 16:31 18:-8 23:-8 26:-13 29:90 36:-11 42:-8 82:67 104:-8 109:-12
from==	1:-15 2:-32 3:-38 5:57 6:21 7:-12 8:-23 9:-35 10:11 11:-13 13:-27 14:-19 15:-15 16:-34 17:-33 18:-18 19:21 20:26 22:-32 23:-19 24:18 25:-26 26:-19 27:-18 28:35 29:11 30:-23 31:-31 32:46 33:-18 34:-21 35:-13 36:-17 39:-12 41:-18 42:-25 43:-28 44:15 46:-8 47:17 48:-16 49:50 50:28 51:31 52:15 54:32 55:-17 56:17 57:21 58:-24 59:60 60:13 62:-11 63:-16 64:45 65:-12 67:-9 68:-14 69:101 70:31 71:41 72:53 73:-13 74:40 77:21 78:-8 79:18 80:-16 81:17 82:-14 83:-10 84:-13 85:27 86:44 87:-29 88:12 89:-12 91:-27 92:-33 93:-9 94:-18 95:-23 96:-42 97:-12 98:8 99:29 100:32 101:-14 104:25 105:-15 106:-23 107:-20 109:45 110:44 111:-25 112:-16 113:-17 114:-14 115:22 116:22 117:-28 119:69 120:37 121:64 122:-10 123:10
show the	5:10 8:20 10:9 12:36 14:17 25:13 28:11 29:9 32:18
the cut	5:35 6:52 13:-10 14:14 27:14 42:23 70:11 81:-11
cut plan	5:103 6:-14 29:-16
from	1:-15 2:-32 3:-38 5:57 6:21 7:-12 8:-23 9:-35 10:11 11:-14 13:-27 14:-19 15:-15 16:-36 17:-33 18:-18 19:21 20:26 22:-32 23:-19 24:18 25:-26 26:-19 27:-18 28:31 29:11 30:-23 31:-31 32:46 33:-18 34:-21 35:-14 36:-17 39:-12 40:-8 41:-19 42:-26 43:-29 44:14 46:-8 47:17 48:-16 49:50 50:28 51:45 52:14 53:24 54:32 55:-17 56:17 57:21 58:-24 59:60 60:13 62:-12 63:-16 64:45 65:-12 67:-9 68:-14 69:96 70:30 71:41 72:53 73:-13 74:33 77:21 78:-9 79:18 80:-16 81:16 82:-14 83:-10 84:-13 85:27 86:44 87:-29 89:-12 91:-28 92:-34 93:-9 94:-18 95:-24 96:-42 97:-12 99:29 100:32 101:-14 104:39 105:-15 106:-23 107:-20 108:17 109:43 110:25 111:-25 112:-16 113:-17 114:-14 115:22 116:22 117:-28 119:69 120:36 121:64 122:-10 123:9
@wire from	1:-8 9:-9 19:31 20:17 32:34 38:8 49:28 50:16 71:25 79:11 87:-13
from #n	4:9 16:-9 28:-10 50:25 51:11 52:24 53:40 69:38 70:-20 81:-15 86:12 96:-8 98:-9 100:8 104:31 108:40 109:21 110:31 123:-18
show _ cut	5:13
the _ plan	2:24 5:24 16:16
cut _ for	0:8 5:50 6:13
plan _ the	5:30 16:8 26:-10 29:55
for _ @wire	7:10 8:-9 9:29 19:18 20:9 21:-8 50:17
the _ from	0:9 2:-11 5:-19 6:17 16:-9 19:9 21:11 32:27 40:-11 44:12 50:16 64:8 74:11 77:12 81:-11 88:10 98:-11 99:10 102:27 104:39 110:12 117:8 120:11 123:-10
from _ mm	86:31
plan $	29:65 82:15
plan of	5:24 16:20
cut _ of	5:23 6:18 42:33 69:-10 70:-32 77:37 123:18
cut==ting	0:8 1:12 5:65 6:23 9:14 13:-8 16:-9 27:28 29:-19 31:-11 32:-14 35:11 42:28 65:15 71:-8 103:9 106:38 107:20 123:25
for @wire	0:-11 1:-12 6:66 7:15 8:23 19:11 20:60 23:-22 68:15 118:15 123:26
for _ from	69:10 104:8
from stick	2:-9 5:10 69:-22 70:60 71:-10 95:-8
stick of	5:8 9:-9 31:28 38:-11 48:10 49:49 65:34 66:18 78:-9 87:-10 115:24 123:36
of #d	0:-8 7:9 18:13 33:19 38:9 40:21 41:-8 65:-14 69:18 70:-12 71:17 73:15 75:20 77:-12 79:-8 80:18 81:32 91:12 95:-9 116:9 119:9 123:-18
@wire _ stick	8:25 49:-13 65:37
from _ of	5:10 20:8 69:9 79:11 87:-9
stick _ #d	115:16
of _ mm	5:8 7:17 40:25 41:9 48:18 73:20 75:20 77:-9 80:20 91:10 119:-27 120:25 123:-9
^ a	0:-12 1:14 3:-15 18:9 36:-8 40:-9 41:14 49:22 54:22 66:-28 67:54 75:9 77:13 78:24 84:8 88:10 91:14 98:11 102:19 123:-10
a cut	54:10
from #d	69:29 79:13 86:36 87:-13
from _ in	86:19
plan _ job	2:26 5:8 16:19 82:12 83:-12
@job from	2:-11 4:12 6:13 44:-13 64:31 69:57 71:-9 74:18 86:9
plan _ @job	2:24 5:20 16:10 75:10
#n from	0:-8 1:22 3:-18 4:-15 5:-23 6:22 35:9 43:-10 44:46 47:21 63:10 64:42 69:27 70:37 71:8 76:9 81:13 92:-17 95:-10 96:-27 123:-10
job _ from	5:-21 6:22 44:9 47:22 63:10 64:45 70:38 71:-9 123:-9
#n _ stick	49:52 69:-18 70:37 88:59 90:-11 115:11 116:-8 123:-14
of _ in	0:-12 68:23 71:18 119:19 120:-18 123:17
what do	0:-15 6:15 8:30 9:33 10:22 11:35 16:-15 17:55 18:17 22:-8 23:18 25:23 27:21 29:-25 30:-8 31:-13 32:-18 33:-17 34:-23
we cut	5:29 6:23 70:17
do _ cut	5:42 6:24 34:-8
must==	2:8 3:20 5:-12 6:39 9:11 10:18 11:33 13:-10 18:17 23:-12 32:-8 33:-15 46:33 50:17 56:16 59:13 76:9 79:-10 80:8 83:10 97:14 103:12 113:22 119:16 123:-8
must	2:8 3:20 5:-12 6:39 9:11 10:18 11:33 13:-10 18:17 23:-12 32:-8 33:-15 46:33 50:17 56:16 59:13 76:9 79:-10 80:8 83:10 97:14 103:12 113:22 119:16 123:-8
what must	6:17 10:22 11:14 18:19 33:-12
must we	6:16 18:10
must _ cut	6:26
what should	0:-15 4:34 6:10 17:33 18:27 22:12 29:24 33:-14 123:-9
i cut	0:16 2:11 5:49 6:33 17:-10 34:-9 41:14 67:10 123:-14
what _ i	0:27 3:-11 5:26 6:30 8:-10 9:8 11:10 16:12 17:70 19:-8 23:-9 25:-8 26:21 27:-12 29:13 31:13 33:37 123:-17
should _ cut	5:30 6:12
must i	6:26 11:11
of #n	1:-16 2:-8 4:-8 7:15 8:-9 11:16 22:31 30:17 33:-10 35:-9 46:33 65:-8 69:10 70:-10 74:14 77:-9 78:42 81:-15 89:16 90:-8 97:-10 109:12 112:52 115:-11 119:38 120:30
cut _ fret	2:-9 6:9 42:8 69:25 70:13 77:13 81:-12
of _ from	20:13 49:17 51:19 69:32 71:9 85:8 104:10 110:-11
stick _ #n	1:9 49:16 119:10 120:-10
we _ @wire	5:11 6:-8 9:-14 31:39 32:25 49:-9 115:12
cut _ @job	5:-18 6:42 107:17
we _ @job	13:22 114:14
@job _ stick	70:16
fret for	0:9 2:-14 3:-9 4:-8 6:-14 35:-8 42:50 74:-18 76:11 77:36 81:44 106:15
cut job	6:28
cut _ #n	5:9 6:17 35:-12 69:23 70:30 103:10
what if	0:28 1:25 5:23 16:89 22:-10 29:-10 33:-16 43:-10 123:19
i only	5:11 43:16
only use	5:15
if _ only	5:15
i _ use	0:9 5:10 35:-21 123:26
only _ the	1:81 5:21 56:11 106:-9 117:11
use _ tin	5:16
use only	5:14 72:11
only the	5:10 11:11 22:50 72:11
i _ only	5:16 110:26
only _ tin	5:14
if we	5:34 6:-8 16:8 24:10
we _ only	65:20
we only	43:10 99:10
we _ use	101:23
tin _ @wire	5:9 22:11 38:12 79:-9
which _ could	5:12 22:22 123:-12
we _ on	0:-14 1:-10 4:17 5:27 8:-19 11:12 21:18 28:45 31:20 52:-17 53:-11 106:17 111:-10 114:13
piece==s	0:9 1:-18 2:-10 4:-10 5:33 6:37 8:87 9:-19 11:-8 13:-11 16:-8 17:-10 19:-15 22:105 23:29 25:-9 27:-12 29:-8 32:-9 33:-8 38:18 39:-13 40:-9 41:-15 49:-8 65:-12 69:-25 70:-8 74:-25 78:54 80:98 81:89 82:45 94:-13 95:-9 96:-11 123:-9
what piece	5:14 22:25 23:10
piece should	5:10
piece _ i	5:19
piece can	5:17
piece _ we	5:8 8:25 22:19
fret could	5:8
short _ could	5:8
which piece	0:-12 5:30 6:17 22:45
from the	0:24 1:22 4:27 5:37 11:-8 20:13 22:-10 25:-10 27:-11 28:20 32:-23 33:-14 35:9 37:15 40:9 42:-8 46:-8 47:38 49:17 52:-8 56:11 69:8 72:8 74:21 76:10 77:-13 79:11 85:21 87:-9 88:21 92:-11 96:-8 99:52 102:-13 103:15 109:31 117:-14 120:-8 121:33 123:-21
from _ tin	0:13 1:20 5:53 22:-9 39:12 80:11
the _ only	5:41 21:-10
only $	1:70 2:13 5:38 17:-8 21:41 53:15 57:12 74:-8 110:10
alon==e	5:55 13:-8 22:-11 49:13 66:-8
alon	5:55 13:-8 22:-11 49:13 66:-8
tin alon	5:48 13:-8 22:-10
the _ alon	5:30 22:-11
alon $	5:12
everyth==ing	5:33 6:-29 8:49 9:15 11:39 12:-8 13:-9 16:-10 17:19 23:-19 26:-10 29:30 33:81 34:-10 36:-17 42:14 46:-9 51:-12 72:14 74:-9 82:90 83:83 104:-9 108:-8 123:-9
everyth	5:33 6:-29 8:49 9:15 11:39 12:-8 13:-9 16:-10 17:19 23:-19 26:-10 29:30 33:81 34:-10 36:-17 42:14 46:-9 51:-12 72:14 74:-9 82:90 83:83 104:-9 108:-8 123:-9
for everyth	5:27 6:-22 9:19
everyth $	5:40 6:-24 17:26 33:25
^ me	9:10 29:19
me _ cut	6:46
job==s	5:18 6:-18 8:-15 9:73 11:30 12:266 13:-16 14:47 19:-8 25:-11 26:-10 27:-9 28:-8 29:18 33:-14 34:-9 60:-11 63:-17 83:9 102:-8 123:-9
)~"
R"~(for all	5:31 8:23 20:-8 26:24 34:-10 68:18
all job	5:23 12:-11
for _ job	6:11 16:-14 29:-10 36:14 42:25 44:11 46:10 82:-8 83:35 106:9 114:11
job $	5:19 12:99 13:15 17:-8 23:23 29:-22 34:10 42:-11 45:34 47:53 63:8 64:34 94:40 102:29 107:-11 123:-33
of everyth	11:16 83:9
print==	5:23 6:38 7:40 38:12 40:20 42:-9 47:13 50:10 81:19 87:20 106:-15 107:15
print	5:22 6:41 7:40 38:12 40:20 42:-9 47:13 50:10 81:19 87:20 106:-15 107:15
^ print	5:27 6:11 7:37
print the	5:12 7:11
cut list	6:117 10:-8 34:31 70:8 81:-11
list for	6:39 9:30 10:44 23:-12 99:12
print _ cut	5:28
the _ list	1:8 6:20 10:78 14:25 34:-9 70:12 81:-11 99:10 119:10
print me	5:15
me cut	5:14
list of	4:23 5:11 6:21 10:39 12:18 31:-20 34:23 56:21 57:14 97:16 99:15 119:11
of all	4:8 5:13 8:48 9:-16 12:17 20:12 21:-11 28:32 29:-8 68:14 83:33
all of	6:-10 16:34 42:45 43:22 51:20 52:12 70:8 80:15 82:28 83:30 110:-10
of it	5:13 9:19 43:17 49:10 56:10 58:13 62:10 69:8 82:27 83:16 100:-8 116:17 123:-10
me _ list	5:14 10:18
list _ all	5:14 12:18
all _ it	5:13 43:17 82:27 83:17 123:-10
it $	0:24 4:20 6:-12 8:-17 11:-13 13:8 14:-10 15:15 16:-18 17:19 18:-13 23:-11 24:-8 26:-8 28:-9 29:-13 30:12 32:-9 33:17 34:-17 35:-9 37:13 39:16 40:-8 42:-9 43:12 44:-11 47:11 50:-8 51:-8 52:16 54:10 56:12 59:14 63:11 64:41 65:-8 69:21 76:33 82:27 86:8 88:-22 89:17 90:-13 92:10 94:-10 99:29 100:-18 101:10 105:35 107:-14 111:8 112:-13 113:-8 114:-9 122:29
queu==e	5:21 6:-8 8:-15 9:39 12:110 13:-8 47:51 64:-10 113:40 123:-14
queu	5:21 6:-8 8:-15 9:39 12:110 13:-8 47:51 64:-10 113:40 123:-14
the queu	8:-14 9:41 12:68 47:55
of _ queu	47:15
queu $	5:16 8:-11 9:18 12:115 47:10
cut everyth	5:10
we _ everyth	23:19 82:-12
whol==e	4:-11 5:18 6:-10 14:31 16:19 17:25 20:28 21:-13 25:-10 27:13 30:30 32:10 33:-8 52:14 53:8 56:10 62:9 67:10 72:-9 82:8 83:16 86:8 100:-8 116:10
whol	4:-11 5:18 6:-10 14:31 16:19 17:25 20:28 21:-13 25:-10 27:13 30:30 32:10 33:-8 52:14 53:8 56:10 62:9 67:10 72:-9 82:8 83:16 86:8 100:-8 116:10
the whol	1:8 5:21 6:-9 16:22 20:12 21:-10 52:15 53:10 56:10 72:-9 82:11 83:19 86:9 100:-8 116:12
whol queu	5:24
the _ queu	5:24
cut all	42:46
i _ all	14:19 42:27 43:15 59:12
cut _ job	2:10 5:14 13:28 123:-13
i need	4:21 5:8 11:-10 16:10 20:18 27:9 28:20 33:47 34:23 102:-8 104:12
need to	5:19 6:-8 9:39 10:11 11:9 27:11 29:-8 36:-15 51:-8 121:9 123:88
to cut	5:26 12:-12 13:37 106:14 123:9
cut for	2:9 5:16 6:10 13:35 42:28 106:13 107:16 123:-13
all the	2:-12 4:12 5:15 6:-11 8:-8 9:30 11:-9 12:16 17:17 19:-15 20:11 23:25 28:25 31:10 32:14 33:-11 34:-11 42:23 43:9 44:-19 56:-8 80:21 81:23 82:22 83:37 88:-10 123:-10
must _ need	5:8
i _ to	0:12 3:8 5:15 6:-8 9:25 10:13 11:9 18:9 54:18 109:30 123:10
need _ cut	5:23
to _ for	5:-8 6:-8 10:-10 13:80 23:-8 29:-11 30:9 36:15 37:-10 64:10 113:21
cut _ all	5:25 12:-12 69:10
do _ need	5:8 7:21 9:23 10:-11 11:-8 25:22 27:15 56:29 83:12 99:8 102:-10 105:26 123:-20
next==	0:-15 1:-17 2:-12 4:-10 5:10 6:-14 7:-8 8:-11 9:-12 10:20 11:17 12:-15 13:-30 14:-9 15:-12 16:98 17:87 18:-8 19:-12 20:-11 22:-14 23:-28 24:-11 25:10 26:44 27:51 28:43 29:60 30:40 31:29 32:-8 33:-23 34:-14 35:35 42:-18 43:57 44:-9 47:-8 49:-32 51:-14 52:19 53:8 54:-8 60:-11 61:-16 62:-12 63:-14 64:-10 65:-17 71:-10 74:-10 82:-8 83:-9 86:-11 88:-10 90:-8 93:-11 98:-8 100:26 101:-8 104:14 105:26 107:-17 108:-18 109:27 110:32 111:26 112:62 113:-11 114:19 117:11 123:28
next	0:-16 1:-17 2:-12 4:-10 5:8 6:-15 7:-9 8:-13 9:-14 10:18 11:25 12:-17 13:-32 14:-10 15:-13 16:95 17:86 18:-8 19:-13 20:8 22:-15 23:-31 24:-11 25:8 26:51 27:49 28:48 29:66 30:44 31:26 32:-9 33:-10 34:-16 35:35 39:-8 42:-19 43:56 44:-10 46:23 47:-8 49:-33 51:-45 52:59 53:39 54:-10 60:-15 61:-20 62:-14 63:-15 64:-11 65:-18 71:-11 74:-13 76:-8 82:-8 83:-10 84:-8 86:-12 88:-11 90:-9 93:-11 97:-8 98:-10 99:-9 100:36 101:-10 102:-8 104:20 105:26 107:-19 108:-37 109:20 110:35 111:30 112:60 113:-12 114:15 115:8 116:8 117:42 119:-8 120:-8
cut next	5:16
i _ next	28:10
next $	5:10 11:-14 16:29 17:21 25:31 26:-25 29:36 112:74 123:9
to _ next	5:12 29:9
we need	7:32 9:12 10:20 25:22 27:8 104:15 123:-9
we _ to	8:-14 9:28 10:44 13:23 31:-13 49:-10 50:13
fret would	0:-8 5:31
work for	5:11 109:18
short _ would	0:-8 5:31
fret _ work	5:19
work _ @job	15:-8 33:23 45:10
fret _ do	5:12
do _ @job	13:39 17:-11 27:-20 63:48 112:11 113:13 123:-15
piece would	5:22
work in	5:8 14:35 25:-8
work _ the	5:13 12:16 13:-8 14:21 29:-8 53:16 57:17 60:9 106:60 107:26 108:10 110:-10
do _ job	0:-8 5:23 27:14 33:11
list job	6:19
list _ job	6:11 12:30
list _ the	5:-8 6:29 10:10 16:22 23:38 83:-8 99:-9 119:14
list the	0:13 12:12 14:-9 25:10 26:8 27:23 32:18
cut _ the	5:-10 6:45 35:13 42:19 70:15 71:-10 106:12
list _ @job	6:9
list _ #n	6:37 10:26
a _ list	6:8
list _ @wire	6:16
show _ list	10:19 31:-8
list $	6:24 10:25 12:25 14:39 34:-9 47:21 64:-8 99:20 121:19
draw==	6:17
draw	6:17
^ draw	6:17
print _ the	6:9 88:12
cut from	6:8 35:10 69:43 70:19 71:-8
from @wire	5:-13 6:14
i _ from	5:-10 6:19 70:14
from _ @wire	5:-8 20:-10 21:13 81:12
cut fret	70:10
i _ fret	69:-10 74:31 76:8 81:22 94:15 96:12
from $	1:-13 5:-25 6:29 9:-8 10:12 19:10 32:54 33:20 69:31 123:-9
i open	6:13
open for	6:33 28:20
stick _ i	6:15
open _ the	6:17 12:28 28:16 53:18
which stick	5:26 6:29
stick do	6:20
we open	6:20 28:68 29:-8 51:-9 53:-14 111:21
stick _ we	6:21
do _ open	6:8 9:17 52:28 123:-14
stick must	6:16
what _ must	6:10
must _ open	6:16
many==	2:-14 4:-8 6:33 8:39 9:35 11:15 12:8 14:37 19:-9 22:39 24:-9 25:78 27:8 29:-18 30:12 32:-13 34:-14 65:-15 97:16 98:10 103:-10 119:8 120:11 123:-14
many	2:-14 4:-8 6:33 8:39 9:35 11:15 12:8 14:37 19:-9 22:39 24:-9 25:78 27:8 29:-18 30:12 32:-13 34:-14 65:-15 97:16 98:10 103:-10 119:8 120:11 123:-14
how many	6:35 8:42 9:40 12:9 14:39 19:-8 24:-8 25:81 27:10 32:-12 34:-12 65:-14 103:-9
many _ must	6:12
many stick	6:14 8:29 9:-9 65:-10
how _ stick	6:14 8:29 9:-9 65:-10
take _ job	63:26 64:-8 82:8
need _ job	6:10
do job	5:9 6:15 15:48 17:-13 63:16 112:18 113:16 123:-11
#n take	4:21 6:26 27:-8 34:16 72:20 82:14
many _ do	6:8 8:-9 25:13
stick _ job	2:-9 5:23 70:27 71:-8
job _ take	1:9 4:21 6:26 72:20 82:14
take $	4:31 5:21 6:60 9:-8 27:42 32:16 82:24
piece do	6:21
do @job	6:11 17:-8 63:29 112:20 113:10
@job take	0:-12 1:25 4:17 5:31 6:23 16:14 35:-9 72:15 82:9
piece _ @job	6:12
stick doe	5:22 6:18 8:12
@job need	5:-8 6:25 46:21 112:13
which _ doe	5:21 6:17 14:22 17:-13 25:-11 26:28 27:16 28:17 29:-9
stick _ the	6:18 49:9 65:33 66:11 70:23 81:-12 117:-9
doe _ @job	5:-8 6:21 11:17 13:-9 15:28 16:14 27:8 28:-10 29:15 63:29 64:17
many piece	6:25 8:16
piece doe	6:15
doe job	5:26 6:16 13:10 15:44 63:18 64:21 123:-10
how _ piece	6:25 8:16
many _ doe	6:10 8:10 13:20 16:15 27:-12
piece _ job	6:24 83:9
piece _ the	6:9 22:11 78:37 82:31
will _ @job	5:41 29:16
the _ take	4:-9 5:37 16:13 82:16 98:13 102:15
job _ need	6:24 82:21 113:26 123:-11
much==	4:-13 6:40 8:45 11:-8 12:-8 13:-32 18:-9 19:40 20:19 21:75 23:32 24:10 25:-13 27:9 29:46 31:9 32:-17 34:-17 39:-8 41:13 54:9 123:27
much	4:-13 6:40 8:45 11:-8 12:-8 13:-32 18:-9 19:40 20:19 21:75 23:32 24:10 25:-13 27:9 29:46 31:9 32:-17 34:-17 39:-8 41:13 54:9 123:27
how much	4:-13 6:41 8:45 12:-8 13:-32 19:40 20:19 21:75 23:32 24:10 25:-13 27:9 29:46 31:9 32:-17 34:-17 123:30
much wire	6:21 8:20 9:-12 21:13 23:12
wire doe	6:21
how _ wire	6:21 8:20 9:-12 21:13 23:12
much _ doe	6:11
new==	0:-19 1:-12 2:12 3:-29 4:-18 5:54 6:14 7:18 8:-27 9:-24 10:-15 11:-12 12:-9 13:-22 14:-9 16:-18 17:-12 18:-12 20:-10 21:9 22:-11 23:-12 24:-8 26:-9 29:-23 30:68 31:-9 32:-12 33:-13 34:10 35:-12 36:-8 40:-15 41:-10 42:-12 43:-11 44:-10 45:95 46:36 47:-9 48:65 53:-9 57:124 59:-22 60:-13 63:-9 64:-10 68:-11 69:-20 70:116 71:8 74:-11 76:-18 77:100 82:12 84:44 86:-13 87:-14 88:-13 90:-12 91:-10 94:8 95:-8 96:-10 97:92 98:-17 99:-12 102:-8 104:-14 107:-11 111:11 112:-8 116:-8 117:8 119:60 120:-16 121:-10 123:38
new	0:-19 1:-12 2:12 3:-29 4:-18 5:54 6:14 7:18 8:-27 9:-24 10:-15 11:-12 12:-9 13:-22 14:-9 15:-8 16:-18 17:-12 18:-12 20:-10 21:9 22:-11 23:-12 24:-8 25:-11 26:-10 29:-24 30:68 31:-11 32:-12 33:-13 34:10 35:-12 36:-8 40:-15 41:-10 42:-12 43:-11 44:-10 45:95 46:36 47:-9 48:64 53:-9 57:121 59:-22 60:-13 63:-9 64:-11 68:-11 69:-20 70:116 71:8 74:-11 76:-18 77:100 78:-8 82:12 84:43 86:-13 87:-14 88:-13 90:-12 91:-10 95:-8 96:-10 97:91 98:-19 99:-12 100:-8 101:8 102:-8 103:-8 104:-14 107:-11 111:11 112:-8 116:-8 117:17 119:59 120:-16 121:-10 123:38
)~"
R"~(much new	5:27 6:32 8:-10 21:10 27:-9
new wire	0:8 2:-9 5:54 6:18 8:-14 9:-11 27:-9 48:69 57:-14 69:-10 70:53 77:36 82:19 123:9
wire will	5:25 6:21
will job	6:14 29:12
how _ new	5:22 6:32 8:-10 21:10 27:-9
much _ wire	5:30 6:20 8:-11 21:10 27:-9
new _ will	5:26 6:11
new _ doe	6:10
wire _ the	0:9 5:28 6:-10 8:-9 10:8 18:30 23:25 27:-8 42:27 74:-10 77:20 82:25 90:-8 99:-8 119:14
much _ will	6:13
doe @job	6:8 63:9 64:21
wire _ @job	5:-13 6:17 18:29 90:10
will @job	5:-8 6:11
will _ take	5:-8 6:11
how _ will	4:-8 9:48 18:8
much _ i	21:15
will _ need	6:17 22:12 37:24
need _ the	6:12
will we	6:10 29:17
wire _ we	8:21 9:-30 10:37 21:22
need _ @job	6:12 46:17 112:13
wire _ i	9:-11 10:46
much _ do	8:-12 9:29 29:18
new _ i	70:11
new @wire	21:13
@wire do	9:54 32:-10
much _ @wire	8:12 19:8 21:-8
@wire _ we	5:12 8:10 9:18 19:15 22:10
^ do	6:20 8:10 9:34 10:-20 11:-13 13:-9 15:-8 17:-23 20:18 22:28 23:-11 26:-8 28:25 29:27 36:-10 37:22 39:-8 50:19 63:30 64:-8 105:-25 109:-8 110:-12 111:8 112:38 113:56 121:-10 123:126
have enough	6:29
enough the	6:23 9:10
do _ have	0:18 4:14 6:20 8:41 9:-30 10:26 11:-13 12:26 17:-10 19:18 22:19 23:-8 24:10 26:46 27:10 28:-9 29:9 30:-10 31:-11 32:12 34:-11 37:11 99:13 113:10 123:-29
we _ enough	6:28 8:-17 9:34
have _ the	2:-8 10:12 11:14 70:25 120:13
enough _ @wire	6:22 9:10 18:8
ther enough	6:18 8:-8 9:46
is _ enough	6:18 8:-8 9:46
ther _ the	6:18 7:8 90:9
enough wire	6:10
wire for	18:17 42:52 72:10 90:9
have _ wire	6:10
enough _ for	6:11 9:18 107:17
have _ for	104:35
enough @wire	8:-8 9:36
have _ @wire	8:25
mark==s	6:54
mark	3:-11 6:57 16:17 42:12 82:11
the mark	3:-11 6:53 16:18
mark for	6:26
give==	1:-13 5:-9 6:17 8:21 11:-12 13:19 17:17 21:-9 23:-13 25:11 29:10 30:21 33:-8 37:34 39:9 42:-8 63:64 64:-10 74:-8 75:9 78:9 82:-22 83:39 103:16 105:44 112:21 114:23
give	1:-13 5:-11 6:16 8:20 11:-15 13:18 16:11 17:16 18:-8 21:-9 23:-13 25:11 29:9 30:36 33:-11 37:33 39:8 42:-8 63:62 64:9 74:-8 75:8 78:9 82:-24 83:38 103:15 105:44 106:-9 112:20 114:23 119:16
^ give	4:-8 6:11 16:10 17:21 21:-8 29:15 37:28 50:8 63:98 82:-10 83:19 103:17 105:33 109:9 112:22 114:10 123:-18
give me	1:-10 8:23 13:33 16:12 17:23 29:20 63:-9
cut of	6:36 13:-8
give _ the	6:12 8:23 13:15 16:13 17:26 64:19 109:11
draw me	6:12
draw _ the	6:12
mark _ the	6:31
label==s	7:254 8:-8 38:-13
label	7:260 8:-8 38:-13
^ label	7:73 38:-9
label $	7:90
step==	27:29 30:-15 54:52
step	7:28 27:81 30:-28 54:55 66:18
label _ @wire	7:60
label the	7:11
print label	7:21
label for	7:58
print _ for	7:9
every==	0:-9 4:20 7:26 8:9 16:18 19:40 20:-9 28:-14 29:-13 31:-12 33:33 39:-8 42:18 51:75 52:-13 53:-19 66:9 67:-8 80:26 82:9 108:38 109:-8 110:-9 116:22
label of	7:19 38:-8
every	0:-9 4:20 7:26 8:9 16:18 19:40 20:-9 28:-14 29:-13 31:-12 33:33 39:-8 42:18 51:75 52:-13 53:-19 66:9 67:-8 80:26 82:9 108:38 109:-8 110:-9 116:22
every #n	7:20
every _ mm	7:20
step==s	7:34 27:51 30:-13 66:18
@wire in	8:8 18:55 20:14 22:-18 38:34 49:20 68:12 81:21 95:-9
in step	7:18
step of	7:18
label _ the	7:52 38:-9
bin==	1:-11 3:10 7:26 22:18 35:-13 37:-17 38:-13 39:120 41:-8 47:13 54:47 80:116 81:-21 91:-9 123:-14
bin	0:-12 1:-16 3:9 6:-8 7:170 8:-14 9:-12 11:-8 19:-11 22:14 23:-9 33:-9 34:-9 35:-19 37:-22 38:-14 39:142 41:-8 47:12 54:45 80:119 81:-22 91:-9 123:-16
the bin	7:36 20:9 39:70 54:32 80:8
bin label	7:33
bin _ for	7:18
every #d	7:9 80:30
by==	1:-12 2:-10 3:-23 4:-16 5:-13 7:20 8:-8 10:-21 11:60 13:-12 16:-28 17:-20 18:-19 22:-9 23:19 24:49 25:-12 28:-10 30:122 31:-14 32:20 35:-16 36:50 37:-17 38:-26 41:32 43:-14 44:-15 45:-8 46:49 47:-12 48:-21 49:-14 50:-9 64:-9 65:17 66:16 67:-15 68:47 69:-8 70:-9 71:-14 72:-14 73:25 75:19 76:-13 78:29 80:-9 82:24 84:54 87:18 88:8 89:-8 90:-12 91:29 96:13 98:-8 100:-8 102:-11 103:18 104:-9 107:-11 112:-11 113:-12 117:-10 119:19 123:18
by	1:-12 2:-10 3:-23 4:-16 5:-13 7:20 8:-8 10:-21 11:60 13:-12 16:-28 17:-20 18:-19 22:-9 23:19 24:49 25:-12 28:-10 30:122 31:-14 32:20 35:-16 36:50 37:-17 38:-26 41:32 43:-14 44:-15 45:-8 46:49 47:-12 48:-21 49:-14 50:-9 64:-9 65:17 66:16 67:-15 68:47 69:-8 70:-9 71:-14 72:-14 73:25 75:19 76:-13 78:29 80:-9 82:24 84:54 87:18 88:8 89:-8 90:-12 91:29 96:13 98:-8 100:-8 102:-11 103:18 104:-9 107:-11 112:-11 113:-12 117:-10 119:19 123:18
@wire by	24:8 36:14 68:13 78:29
by #d	3:-12 7:12 40:-24 41:18 45:-10 48:-9 68:13 73:9 84:23 87:13 91:60
the _ by	7:11 11:10 12:9 30:10 46:19 78:13 82:19 91:9 119:17
^ bin	7:21 35:-8 37:-8 39:58 80:69 81:-12
bin _ of	80:20
the label	7:26
print _ label	7:20
need label	7:22
we _ label	7:11
need _ for	7:10 25:20 83:13 104:10
for _ tin	22:-8 38:24 71:14 78:26
bin==s	7:145 8:-10 9:-8 19:-8 20:11
i _ label	7:11
for _ bin	7:14 39:37
bin $	7:18 39:64 80:28
drawer==s	7:27
drawer	1:-21 3:-10 7:33 8:13 22:28 35:8 38:48 41:22 45:-11 71:11 74:-11 77:8 78:24 79:-8 81:8 95:-9 123:17
the drawer	0:9 7:23 35:13 71:-8 78:-17 123:19
for _ drawer	7:23
drawer $	8:14 22:22
by #n	30:38 46:-9 68:30 73:20 84:33 87:10 88:-16 123:21
bin _ #n	7:-10 35:-8 39:40 54:34 80:26
by _ mm	3:-9 40:-20 41:19 68:28 87:11 91:43
tin _ #d	38:17
by _ in	41:11 68:16
the _ every	7:8
goe==s	0:8 2:8 4:17 7:26 9:9 11:-8 13:-10 16:22 17:-9 26:-12 33:-9 34:16 35:54 38:13 39:29 41:-8 63:32 64:-8 67:8 85:11 90:-9 92:27 93:8 100:28 110:20 113:23
goe	0:8 2:8 4:17 7:26 9:9 11:-8 13:-10 16:22 17:-9 26:-12 33:-9 34:16 35:54 38:13 39:29 41:-8 63:32 64:-8 67:8 85:11 90:-9 92:27 93:8 100:28 110:20 113:23
what goe	7:30
goe on	7:30 9:12 16:22
what _ on	1:-8 7:30 8:31 9:15 11:-16 12:8 13:-8 16:8 17:-11 24:33 27:-8 29:36 31:10
goe _ the	7:27 16:16 38:16 39:27 63:11 113:10
on _ bin	7:30
bin _ @wire	7:9
step _ #n	7:16 54:22
bin _ the	7:10
bin _ #d	7:13 80:17
what bin	7:37
bin are	7:49
are ther	0:-13 7:43 8:10 9:-8 11:-9 14:-12 17:10 19:14 22:-8 25:37 29:-8 32:22 34:29
what _ are	7:36 8:-12 13:8 16:19 23:11 25:24 32:14 34:-12
bin _ ther	7:49
ther $	0:25 7:30 8:51 9:-14 11:-14 14:66 15:-17 19:23 22:-20 25:13 26:-10 32:18 33:-8 34:39 92:10 123:-16
ther of	7:8 8:17
which bin	7:34
bin do	7:22
bin _ we	7:22
which _ are	0:-20 7:20 9:27 11:40 12:26 17:20 19:10 22:-8 24:9 26:-10 28:-8 29:14 30:-8 31:40 34:39 50:-8
are _ for	11:-12 23:8 52:16 107:15 117:15
ther _ @wire	8:15 9:22
stock==	0:11 1:-8 2:-11 5:8 8:103 9:19 16:8 19:-14 22:14 38:-14 48:9 49:22 50:9 65:35 70:17 87:-8 115:-9 123:27
stock	0:11 1:-8 2:-11 5:8 8:103 9:19 16:8 19:-14 22:14 38:-14 48:9 49:22 50:9 65:35 70:17 87:-8 115:-9 123:27
^ stock	8:99 9:32 19:-8 49:-9
stock $	8:73 9:-9 49:19
stock _ @wire	8:19 50:19
piece have	22:11
many _ have	25:14
have _ got	4:-8 8:38 11:30 12:33 23:-14 25:9 27:-15 31:32
got $	8:60 9:-10 11:-12 12:-12 25:30
have $	8:48 9:-9 10:-12 11:-24 12:13 14:34 19:19 22:-10 25:54 27:19 32:13 123:-8
many short	8:14
how _ short	8:14
many _ fret	8:14
got of	33:11
got _ the	4:-8 8:13 11:51 27:-15 33:10
we $	0:21 8:13 9:-17 21:-9 25:11 31:8 32:20
@wire are	8:42 49:-15 87:11 115:25
short _ of	8:20 85:14
of _ are	8:36 25:11 51:-12 53:17 69:-8 73:13 81:11 108:10 116:9 117:-10
@wire _ ther	8:42 22:-12
are in	7:13 12:17 14:11 28:-9 49:13 52:11 71:10 81:21
@wire _ in	7:26 8:27 18:30 19:23 20:31 21:-11 22:-33 31:-8 38:10 66:12 78:35 79:-11 81:10
are _ the	12:19 17:11 24:19 27:14 42:-12 53:10 69:20 71:10
@wire have	8:18 19:10 81:11 123:9
the _ have	0:10 8:18 9:-11 11:19 25:42 29:-13 49:25 80:8 81:9 96:9 120:12
many _ of	5:13 8:16 9:21 21:10 65:-11
of _ have	19:16 123:10
the _ are	2:15 5:-8 11:-12 18:19 49:-8 51:15 52:10 54:12 70:12 73:15 74:-8 101:34 115:19
wire do	8:20 9:-17 10:38
what wire	8:29 10:40
wire have	8:8 9:12
much _ have	8:8 29:10
what have	0:22 8:40 9:-10 11:-26 12:26 13:19 19:-10 21:12 25:-13 26:14 29:-17 31:19 33:47
is in	1:-12 8:51 12:33 14:14 15:-9 22:-17 25:-9 28:27 35:12 38:8 40:-14 54:23 74:40 76:-8 77:8 88:-8 90:-16 95:9 101:9 109:-16 110:40
much the	8:16
how _ the	5:13 8:10 13:27 16:-9 17:15 20:12 21:-8 25:34 123:-8
@wire is	3:-16 8:49 9:-26 13:-9 18:13 29:-9 31:9 38:-11 39:21 50:86 65:19 66:18 68:16 79:13 80:22 87:29 91:-15 117:37 118:17 123:-24
the _ is	1:-8 3:14 4:-12 8:-9 9:-15 11:-16 13:-15 14:-8 15:-15 17:-35 23:-11 25:-26 26:-9 27:-12 28:-25 29:-15 36:-8 41:14 42:15 44:28 47:40 50:19 52:26 54:25 59:9 63:31 64:13 65:8 66:11 67:-10 70:9 75:12 82:18 83:-11 86:8 87:9 88:12 90:-17 91:-20 92:32 93:9 96:22 98:-9 101:42 105:-12 106:8 107:-8 108:20 109:-8 111:17 112:8 116:8 117:32 123:28
)~"
R"~(much @wire	8:20 9:25 20:18 21:-13 31:8
how _ @wire	8:36 9:21 20:17 21:-14 31:8 67:9
left==	8:43 9:24 11:-10 13:21 14:27 15:-11 17:18 19:-13 20:18 21:-8 22:-11 23:-14 27:42 29:9 33:-13 49:-20 61:87 62:-13 65:66 66:25 67:-15 98:47 115:-8 118:8 123:-13
left	8:43 9:24 11:-10 13:21 14:27 15:-11 17:18 19:-13 20:18 21:-8 22:-11 23:-14 27:42 29:9 33:-13 49:-20 61:87 62:-13 65:66 66:25 67:-15 98:47 115:-8 118:8 123:-13
is left	8:20 9:-11 13:20 17:21 20:14 23:-9 27:32 65:30 66:24 67:-11
much _ is	8:24 9:-11 23:23 27:24 31:9
@wire _ left	8:14 49:-14 65:50 66:27 67:-14
left $	9:26 14:16 49:-13 61:14 65:51 66:15 67:-8 98:38 118:10 123:-9
piece of	8:25 22:12 38:19 78:19 81:8 82:8 83:9
the _ do	9:19 120:9
piece _ @wire	8:23 78:9
stock of	8:50 9:-11 22:-10 49:-11 50:19 123:39
stock _ the	0:13 8:20 9:-9 22:18 65:-10 123:42
left of	8:24 13:-14 27:38
what _ left	8:23 9:-9 13:17 17:21 20:15 23:-8 27:29
left _ the	8:17 27:23
the the	9:-8 31:16 33:9 116:15 117:13 118:11
of _ the	8:14 27:19 28:31 103:18
the _ @wire	0:-15 1:-11 9:-17 18:-9 31:13 35:59 36:35 37:-11 39:58 49:-9 65:12 69:32 81:-29 87:17 116:26 117:22 118:8 123:-13
wire $	5:28 6:-11 8:51 9:64 10:20 19:-13 21:-16 23:-18 27:12 32:-11 33:11 42:-11 48:18 70:22 77:14 82:14 88:-8 90:12 120:32
of _ wire	2:-8 8:-25 9:54 20:15 21:-10 65:14 70:35 72:13 74:-10 77:10 87:23
spar==e	8:11 21:11 38:19 64:10 97:12 99:17
is to	0:18 8:18 10:20 11:9 13:19 15:-8 17:-16 29:-16 36:20 39:17 42:10 50:-8 63:-8 64:18 82:20 88:-9 98:13 99:15 113:22 114:11 121:16 123:-21
spar	8:11 21:11 38:19 64:10 97:12 99:17
to spar	8:16 38:12
@wire _ to	8:16 9:9 18:8 27:-15 31:18 32:20 65:15 67:17 87:27
is _ spar	8:19
spar $	8:22
free==	1:-22 11:-12 13:-21 15:-8 17:-11 23:20 25:21 26:-21 28:-21 29:109 35:-8 37:79 39:-16 42:-9 59:12 64:139 76:9 82:-11 83:102 98:-10 100:-13 101:-12 105:68 108:17 109:13 110:-13 112:-13 123:-14
free	1:-22 11:-12 13:-21 15:-8 17:-11 23:20 25:21 26:-21 28:-21 29:109 35:-8 37:79 39:-16 42:-9 59:12 64:139 76:9 82:-11 83:102 98:-10 100:-13 101:-12 105:68 108:17 109:13 110:-13 112:-13 123:-14
is free	8:9 25:8 29:9 64:80 76:12 112:-9 123:-8
@wire _ free	8:10
free $	1:-9 8:8 13:-12 23:81 25:44 29:-12 37:-10 64:52 76:12 109:18 123:-12
show tin	8:36
show _ tin	8:29
what @wire	23:22
what _ is	1:10 11:11 13:79 27:-8 29:14
what the	2:11 74:8 82:19
what _ @wire	22:9
supply==	8:-10 9:154 14:24 32:14 49:24 120:25 121:17
supply	8:-10 9:152 14:23 19:-8 32:29 49:24 120:25 121:17
^ supply	9:88
supply $	9:90 32:36 49:21 120:-10
supply the	14:29 32:15
supply _ @wire	32:15
buy==	8:-13 9:18 10:102 11:-20 29:-15 32:34 119:14 120:-8 121:21 123:-9
soon==	9:35 10:-8 16:-13 50:9 51:13 82:11 100:17 104:9 108:8 114:11
^ should	9:40 22:50 39:-18 123:15
buy	8:-13 9:18 10:102 11:-20 29:-15 32:34 119:14 120:-8 121:21 123:-9
to buy	9:26 10:44 11:-16 29:-12 32:10
buy wire	9:11 10:-14 119:15 121:10
soon	9:35 10:-8 16:-13 50:9 51:13 82:11 100:17 104:9 108:8 114:11
need _ buy	10:11
to _ wire	9:8 10:-12 32:-11 120:35
soon $	100:18 114:11
i buy	10:33 32:13
should _ buy	10:20
i _ wire	32:8
order==	0:-12 6:-9 7:-8 8:-28 9:73 10:107 11:-25 12:-10 14:-10 15:20 16:-8 17:-12 19:-19 20:-9 22:-12 23:-11 24:-8 25:-11 26:-16 27:8 28:-20 29:-29 30:-14 31:45 32:16 33:-20 34:-14 37:-11 38:-10 39:-9 46:-15 48:-8 49:-17 50:45 52:-9 53:-10 54:-14 56:-8 57:-8 59:-9 65:-17 66:-8 74:-9 87:-10 98:-11 99:-16 100:13 105:-15 107:-8 109:-10 115:36 116:174 117:148 118:168 119:68 120:18 121:35
order	0:-19 2:-10 4:-9 6:-19 7:-11 8:-47 9:62 10:187 11:-48 12:-8 14:-16 15:19 16:-16 17:-16 18:-10 19:-31 20:-16 21:-10 22:-21 23:-18 24:-11 25:-15 26:-20 28:-27 29:-52 30:-18 31:275 32:35 33:-30 34:-24 35:-9 37:-14 38:-15 39:-11 42:-12 43:-8 44:-8 46:-19 47:-8 48:-10 49:-34 50:39 51:-9 52:-13 53:-14 54:-17 56:-10 57:-11 59:-12 64:-8 65:-32 66:-15 67:-11 68:-9 74:-10 78:-12 80:-9 85:-8 86:-9 87:-13 88:-8 97:-10 98:-13 99:-18 100:11 102:-8 103:-8 105:-17 106:-8 107:-11 109:-16 110:-9 111:-12 114:-8 115:208 116:151 117:143 118:192 119:56 120:10 121:28 122:-8 123:-12
we order	9:8 10:-8 31:17 32:26 117:-9 118:40 119:39 121:-12
order wire	9:8 115:18 119:-9
do _ order	32:32 118:-8 123:15
shall==	7:24 9:17 10:10 11:-9 29:26 38:-8 41:13 42:-10 52:12 54:-9 56:20 57:11 59:11 60:19 64:12 98:11 99:8 102:-8 103:16 106:-15 110:17 112:10 113:16 114:20 123:-9
shall	7:24 9:17 10:10 11:-9 29:26 38:-8 41:13 42:-10 52:12 54:-9 56:20 57:11 59:11 60:19 64:12 98:11 99:8 102:-8 103:16 106:-15 110:17 112:10 113:16 114:20 123:-9
^ shall	9:9 29:30 106:-10
have to	0:8 2:11 3:8 4:13 8:-16 9:43 10:30 11:54 16:-8 17:-8 18:8 24:11 29:-13 30:18 31:-13 37:22 50:12 80:10 91:-8 113:22 120:9 123:-19
to order	9:44 10:67 28:-8 31:-15 32:-9
shall _ have	9:17 10:-8
have _ order	10:35 31:22
now==	0:-20 1:-18 2:-20 3:-20 4:-30 5:-15 6:-11 7:-8 8:-21 9:12 10:10 11:-22 12:-13 13:-17 14:-18 15:-15 16:-11 17:37 18:-11 19:-9 20:-10 22:-15 23:-12 24:-9 25:36 26:-20 27:-15 29:44 30:-12 31:-19 32:-15 33:-24 34:-11 36:22 37:14 38:12 39:-12 40:-25 41:17 44:-11 45:-11 46:26 47:-9 50:-9 51:38 52:-13 53:-16 54:48 56:28 57:21 59:18 60:86 61:-19 63:12 64:48 65:-9 66:12 68:-8 69:-24 74:63 77:13 80:-11 81:-14 82:-14 85:-9 86:8 88:-11 90:-19 91:-12 92:-15 94:-10 95:16 96:-10 97:8 98:68 100:-14 101:-11 102:58 103:15 106:73 107:25 108:13 109:-20 112:-16 114:-8 115:-11 116:-21 117:88 118:-19 119:36 120:81 121:-14 123:-55
now	0:-20 1:-18 2:-20 3:-20 4:-30 5:-15 6:-11 7:-8 8:-21 9:12 10:10 11:-22 12:-13 13:-17 14:-18 15:-15 16:-11 17:37 18:-11 19:-9 20:-10 22:-15 23:-12 24:-9 25:36 26:-20 27:-15 29:44 30:-12 31:-19 32:-15 33:-24 34:-11 36:22 37:14 38:12 39:-12 40:-25 41:17 44:-11 45:-11 46:26 47:-9 50:-9 51:38 52:-13 53:-16 54:48 56:28 57:21 59:18 60:86 61:-19 63:12 64:48 65:-9 66:12 68:-8 69:-24 74:63 77:13 80:-11 81:-14 82:-14 85:-9 86:8 88:-11 90:-19 91:-12 92:-15 94:-10 95:16 96:-10 97:8 98:68 100:-14 101:-11 102:58 103:15 106:73 107:25 108:13 109:-20 112:-16 114:-8 115:-11 116:-21 117:88 118:-19 119:36 120:81 121:-14 123:-55
wire now	9:12 10:-8
have _ buy	9:27 10:34 11:-16 29:-12 32:11
now $	0:-10 1:-18 3:-15 5:-12 8:-15 9:21 10:20 11:-21 12:-8 13:-10 14:-13 15:-10 17:34 22:-10 23:-13 25:38 26:-14 29:65 30:-10 31:-13 32:-13 33:-17 34:-17 35:-9 36:27 37:20 40:-9 43:-8 45:-9 56:13 57:-10 59:14 60:57 61:-13 62:-10 64:61 66:8 70:-8 74:28 81:8 82:-11 84:9 88:-10 90:-13 97:-17 98:48 102:48 103:23 104:-8 106:12 108:-12 109:-12 110:15 112:-11 116:-15 117:74 118:-12 119:26 120:23 121:-10 123:-34
order anyth	9:30 10:-12 121:-8 123:16
to _ anyth	9:30 10:-12
shall i	9:12 29:29 106:-10
buy any	9:8
any wire	9:32 23:10
to _ any	22:13
we buy	10:30 32:16
any the	31:18
@wire now	9:30 117:-10
do _ buy	10:26 32:24 121:11
we _ any	8:20
any _ @wire	31:18
the _ now	9:8 37:27 43:8 58:13 71:10 83:13 86:16 97:-8 117:13 120:8 123:-9
some==	0:10 2:10 29:8 68:16 78:9 114:-16 123:31
some	0:10 2:10 29:8 68:16 78:9 114:-16 123:31
order _ the	10:9 31:19 115:16 116:-9 118:15
more==	0:-14 1:-16 2:-8 3:-8 8:-26 9:38 11:-13 13:-15 16:12 17:-16 23:-13 24:-8 26:-8 28:-21 29:-9 30:40 31:-15 32:-11 33:-9 37:32 41:10 42:-8 43:-10 44:-8 46:16 49:45 51:31 52:-24 56:53 59:15 61:15 62:26 63:-10 64:9 68:11 83:22 85:19 86:15 88:-11 89:-8 90:-14 92:65 94:-11 97:-8 98:-17 99:30 100:-19 101:44 103:-12 107:-8 108:23 109:-17 112:8 113:9 121:57 122:-10 123:-8
more	0:-14 1:-16 2:-8 3:-8 8:-26 9:38 11:-13 13:-15 16:12 17:-16 23:-13 24:-8 26:-8 28:-21 29:-9 30:40 31:-15 32:-11 33:-9 37:32 41:10 42:-8 43:-10 44:-8 46:16 49:45 51:31 52:-24 56:53 59:15 61:15 62:26 63:-10 64:9 68:11 83:22 85:19 86:15 88:-11 89:-8 90:-14 92:65 94:-11 97:-8 98:-17 99:30 100:-19 101:44 103:-12 107:-8 108:23 109:-17 112:8 113:9 121:57 122:-10 123:-8
more the	106:9 110:11 111:-10
should _ order	9:36 31:-10
we _ more	9:11
to _ more	9:8
should _ have	10:13 122:10
order _ @wire	9:13 31:33 115:55 116:-14 118:17 119:-8
order any	31:19
need _ order	9:31
ther _ wire	9:12
enough $	3:9 9:11 67:8 85:-12 90:14 123:31
@wire left	8:42 65:22
the _ left	65:14
left for	61:13
open job	9:41 12:-20 14:52
for _ queu	9:8
shop==	1:-9 8:11 11:-12 12:-10 14:38 17:-8 20:-10 23:20 25:27 26:-11 28:21 29:-17 30:8 31:-9 33:-12 34:-12 47:22 51:8 52:64 53:51 54:34 60:-12 61:51 62:19 108:42 110:-11 111:46 119:8 121:9 123:-20
)~"
R"~(shop	1:-10 6:-13 9:32 10:46 11:-13 12:-11 14:36 17:-8 20:-13 22:-9 23:12 25:27 26:-13 27:-8 28:20 29:-18 31:-11 33:-14 34:-17 47:22 51:8 52:63 53:51 54:34 60:-12 61:50 62:18 108:42 110:-11 111:46 119:8 121:9 123:-20
the shop	8:10 10:21 11:-11 12:-11 14:28 23:20 25:28 26:-11 28:34 29:-16 30:9 31:-9 32:-9 33:-10 34:-15 51:10 52:63 53:44 54:35 60:-10 61:36 62:31 108:18 110:-8 111:19 121:10 123:-18
short on	9:11 41:21
is _ shop	28:47 52:-13
the _ short	38:-10 74:15 78:24 88:-9
shop _ on	53:14
short _ any	8:-8 9:26 22:12
on _ wire	9:22 10:-8 28:-11 31:17
run==ning	9:86 11:9 25:13 101:13 123:-8
is we	9:9
run	8:-12 9:148 10:12 17:-8 25:11 28:-10 101:45 103:17 111:10 118:17 123:-10
we run	9:12 29:9
run short	9:18
short of	8:-8 9:27 50:24
of wire	0:10 19:19 24:13 31:8 42:33 48:26 119:12
run _ of	9:14
shop run	111:12
of anyth	123:13
the _ run	9:40 10:9 53:10
short _ anyth	39:9
anyth $	0:15 9:41 10:-10 11:32 22:28 26:11 39:8 113:12 123:-14
low==	0:-14 2:-9 3:-10 8:-9 9:90 11:-8 13:-17 17:77 29:-8 40:-26 41:-11 44:-9 50:89 76:-9 88:37 91:172 96:-8 123:-13
low	0:-14 2:-10 3:-10 8:-9 9:90 11:-8 13:-20 17:112 23:-8 29:-8 40:-26 41:-11 44:-10 50:89 76:-9 88:36 91:171 96:-8 123:-13
run low	9:62
low of	17:18
low on	9:25 17:13 91:9
on anyth	9:22
run _ on	9:24
low _ anyth	9:22
are we	8:40 9:15 11:21 12:-8 13:46 16:-8 19:-10 23:12 25:-10 27:11 28:92 29:25 31:37 32:-10 52:-21 53:-15 106:-10 107:-9 111:-14
are _ run	29:10
the _ low	9:31
low _ the	17:9
short _ the	41:9 78:10
on _ @wire	8:-13 21:18 87:29
is _ low	9:30
we short	8:-9 9:29
on @wire	87:21
is _ short	9:9 22:19 41:37 50:10 78:10
short _ @wire	9:8
wire is	8:13 23:19 87:34 90:30 119:23
wire _ short	9:11
short $	9:21 39:19 41:27 78:9 85:16 123:12
is run	9:39
what _ run	9:41
what are	0:-8 5:-11 8:-14 11:19 12:-15 14:23 17:-13 23:44 26:15 27:43 28:72 29:-9 31:-10 32:20 33:-12 34:11 108:-11
are run	25:12
are _ short	2:21 9:29 22:15 123:-12
wire are	9:36 17:-8 22:12 87:12
are short	9:9
low $	0:-8 9:58 17:15 91:80
out==	0:8 1:-15 4:-9 5:30 6:-10 7:-8 8:19 9:25 10:-12 11:8 12:-13 13:-15 15:-11 16:-25 17:-12 18:-11 19:-14 20:61 21:-14 22:54 23:-13 24:-8 25:13 26:-14 27:8 29:-17 31:-12 32:-17 33:-21 35:17 36:-10 38:-14 39:57 40:-16 41:26 43:-19 45:-10 46:26 47:37 49:-10 51:-9 52:-8 53:-8 54:-11 62:15 65:-18 67:-8 69:51 70:10 71:60 72:27 74:-28 76:-15 77:-21 78:-17 79:-10 80:41 81:14 84:-10 85:28 86:33 88:-13 89:-9 90:20 91:-8 93:-11 94:27 95:-9 98:-11 100:70 101:9 104:-10 107:22 110:-8 111:-10 112:-11 114:-11 117:-15 118:12 119:-8 121:46 122:-8 123:-11
is @wire	1:56 8:-12 9:-11 11:-8 18:19 23:-9 31:69
@wire run	9:37
out	0:8 1:-15 4:-9 5:29 6:-10 7:-9 8:18 9:22 10:-12 11:8 12:-13 13:-15 15:-11 16:-25 17:-12 18:-12 19:-18 20:76 21:-16 22:54 23:-14 24:-8 25:13 26:-15 27:8 29:-17 31:-12 32:-17 33:-21 35:17 36:-10 38:-14 39:57 40:-16 41:26 43:-19 45:-10 46:26 47:37 49:-10 51:-9 52:-8 53:-8 54:-11 62:15 65:-18 67:-8 69:51 70:10 71:60 72:27 74:-28 76:-15 77:-21 78:-17 79:-10 80:41 81:14 84:-10 85:28 86:33 88:-13 89:-9 90:20 91:-8 93:-11 94:27 95:-9 98:-11 100:70 101:9 104:-10 107:22 110:-8 111:-10 112:-11 114:-11 117:-15 118:12 119:-8 121:46 122:-8 123:-11
run out	9:56 118:19
@wire _ out	9:27 20:18
out $	8:-8 9:20 11:13 20:15 22:33 25:15 29:-10 39:39 47:21 77:17 80:-14 81:25 90:24 118:18 121:13 123:-12
@wire _ low	50:43 91:-13
@wire low	9:24 50:32
is _ @wire	9:47 18:32 22:11 29:-11 31:20
the wire	5:-8 6:-9 9:48 11:-15 16:-10 17:-11 18:74 19:-8 20:47 23:-10 27:9 29:-11 33:-9 42:13 48:13 50:9 65:14 72:32 73:-13 82:8 87:-8 106:20 117:12 119:16 123:-10
wire run	9:17
wire _ out	9:14 20:10
is _ wire	18:32 31:16
wire==s	8:42 9:54 10:12 17:-12 19:9 31:12 50:-8
is wire	24:8
refret==s	8:-43 9:93
refret	8:-45 9:87 27:77 29:-19 30:132 34:-9 76:21 123:-9
many refret	8:-32 9:55
refret left	8:-8 9:17
left on	27:18 29:8 65:8
how _ refret	8:-32 9:55
many _ left	8:-8 9:17
refret are	8:-9 9:21
are left	8:11 49:-8 65:8
many _ are	8:-9 12:33 25:10 97:21
are are	88:8
left in	8:11
are _ in	2:-9 14:12 25:10 43:11 67:15 94:9 112:16 119:9
refret _ we	9:9
still==	0:-20 3:-9 4:-11 5:-16 6:-9 8:9 9:19 11:-13 12:15 13:69 16:9 19:-8 23:31 27:28 29:-12 31:42 33:-13 42:-9 44:74 86:28 88:49 119:-8
still	0:-20 3:-9 4:-11 5:-16 6:-9 8:9 9:19 11:-13 12:15 13:69 16:9 19:-8 23:31 27:28 29:-12 31:42 33:-13 42:-9 44:74 86:28 88:49 119:-8
we still	31:31
still have	13:22 123:20
we _ have	114:16 123:33
still _ of	1:15 9:9 120:8
we do	5:9 17:27 30:10 34:-9 37:13 52:27 56:28 85:24 99:23 102:9 105:10 111:-9 121:24 123:-33
do _ do	17:19 29:10
do _ @wire	9:10
many _ is	9:8
refret _ @wire	8:-11 9:15
is _ good	3:8 39:29 50:8 82:8
good $	8:-14 9:35 18:42 39:27 44:16 61:16 62:13 85:28 99:11
last==	0:-11 1:-8 3:-11 4:8 5:-9 8:-16 9:69 10:15 11:14 13:-12 14:-11 16:-10 17:-19 19:50 20:46 21:24 22:-10 27:-10 29:-15 30:-10 31:-14 32:-18 33:28 34:-12 40:-14 42:-8 43:14 44:23 46:-17 60:-8 61:23 74:-15 76:-14 88:15 90:-8 92:176 96:-9 110:-16 112:-8 122:122
last	0:-11 1:-8 3:-11 5:-9 8:-17 9:94 10:15 11:13 13:-12 14:-11 16:-10 17:-19 19:48 20:45 21:24 22:-10 24:-8 29:-16 30:-11 31:-17 32:-19 33:27 34:-12 35:-8 40:-14 42:-9 43:13 44:23 46:-17 60:-8 61:23 74:-15 76:-15 88:15 90:-8 92:176 96:-9 97:9 107:-8 110:-16 112:-8 122:122
@wire last	9:35 21:12 31:-10
is _ last	92:57
doe _ @wire	1:-9 8:-8 9:16 18:11 22:26 31:14 32:13
the _ last	20:10 33:-13 97:14 123:36
many _ the	22:10 30:11 119:10
last $	9:64 31:-10 33:16 92:60
are _ good	8:-13 9:39
run==s	9:17 101:32 103:18 111:11
first==	9:17 13:-13 29:16 63:-8 112:80 113:40
what run	9:17
first	9:17 13:-13 29:16 63:-8 112:80 113:40
run _ first	9:18
first $	9:17 29:16 112:98 113:-13
which wire	9:18 10:51 17:-8
out first	9:14
which _ is	0:15 11:8 13:38 14:37 25:10 26:14 29:8 88:-12 123:19
is _ out	25:18 61:17 62:-10 100:-27 101:28
what _ out	9:10 11:13
when==	8:-19 9:102 10:-11 11:109 12:-13 13:-26 14:-12 15:-12 16:-10 17:-8 18:-16 19:43 20:-8 21:-10 23:-18 24:-8 25:38 26:44 28:135 29:134 30:71 31:89 32:-13 33:27 38:-19 42:-18 43:-9 45:-10 46:-8 47:-13 49:-19 50:38 52:-8 53:-13 54:-8 58:8 63:-18 64:-12 65:-10 76:-9 86:-9 98:-8 100:-12 101:-11 105:-11 106:-12 107:-10 109:-17 110:-8 112:-8 114:-21 116:-8 118:-8 119:12 120:-11 121:28 123:-14
run==	9:45 10:14 118:18
when	8:-19 9:102 10:-11 11:109 12:-13 13:-26 14:-12 15:-12 16:-10 17:-8 18:-16 19:43 20:-8 21:-10 23:-18 24:-8 25:38 26:44 28:135 29:134 30:71 31:89 32:-13 33:27 38:-19 42:-18 43:-9 45:-10 46:-8 47:-13 49:-19 50:38 52:-8 53:-13 54:-8 58:8 63:-18 64:-12 65:-10 76:-9 86:-9 98:-8 100:-12 101:-11 105:-11 106:-12 107:-10 109:-17 110:-8 112:-8 114:-21 116:-8 118:-8 119:12 120:-11 121:28 123:-14
^ when	9:10 11:58 12:-8 13:-17 18:-9 19:36 23:-10 25:53 26:55 28:45 29:63 30:45 31:83 42:-12 44:-10 49:-16 58:10 63:-14 106:-9 113:-14 114:-17
when do	9:10 11:27 26:55 28:32 29:-20 31:29 49:-15 114:-12 123:-11
do the	8:-12 9:28 10:9 12:-8 17:10 20:18 24:17 27:8 31:31 32:-9 49:-15 63:62 102:18 112:11 113:10 123:-20
when _ the	9:28 11:35 19:30 25:51 26:-24 29:47 31:70 49:-15 123:-9
used==	0:-9 1:-15 3:-9 9:19 15:-9 16:-11 22:26 23:-11 29:-11 33:29 34:33 35:80 36:-17 70:15 80:-9 81:62 83:9 100:19 101:11 123:42
up==	1:-12 3:-10 8:-16 10:-8 11:38 12:-9 13:33 15:-10 16:-12 17:-9 18:-11 19:-10 20:52 21:-16 22:23 23:-17 24:68 25:-18 26:-9 27:-14 28:-14 30:-10 32:-9 33:-25 34:-11 36:-13 38:-10 39:-10 40:-22 41:46 42:-22 44:49 46:-12 47:8 49:-9 51:11 52:9 53:21 54:-13 55:10 58:11 59:-8 62:-10 63:-12 64:68 67:-8 68:9 69:48 74:-9 76:-28 77:-8 78:-9 83:-11 86:-12 87:-12 88:29 89:-9 90:53 92:19 94:-11 96:-9 97:8 98:58 99:-14 100:-16 101:83 102:-8 103:-30 104:-16 105:55 106:27 107:-13 108:-9 109:-15 110:-17 112:-12 113:-9 114:-15 123:-12
when doe	11:12 25:27 28:24 29:-10 31:26
doe @wire	9:53 18:24 24:21 27:-11 31:-11
@wire be	5:17
used	0:-9 1:-15 3:-9 9:19 15:-9 16:-11 22:26 23:-11 29:-11 33:29 34:33 35:80 36:-17 70:15 80:-9 81:62 83:9 100:19 101:11 123:42
be used	83:11 100:20 101:12
up	1:-12 3:-10 8:-16 10:-8 11:38 12:-9 13:33 15:-10 16:-12 17:-9 18:-11 19:-10 20:52 21:-16 22:23 23:-17 24:68 25:-18 26:-9 27:-14 28:-14 30:-10 32:-9 33:-25 34:-11 36:-13 38:-10 39:-10 40:-22 41:46 42:-22 44:49 46:-12 47:8 49:-9 51:11 52:9 53:21 54:-13 55:10 58:11 59:-8 62:-10 63:-12 64:68 67:-8 68:9 69:48 74:-9 76:-28 77:-8 78:-9 83:-11 86:-12 87:-12 88:29 89:-9 90:53 92:19 94:-11 96:-9 97:8 98:58 99:-14 100:-16 101:83 102:-8 103:-30 104:-16 105:55 106:27 107:-13 108:-9 109:-15 110:-17 112:-12 113:-9 114:-15 123:-12
)~"
R"~(used up	9:21 35:9 69:-8 81:8
when _ @wire	11:-8 50:11
doe _ be	109:9
@wire _ used	81:8
be _ up	5:17 31:19
up $	2:12 6:11 9:17 11:8 16:-10 17:12 24:-10 29:48 31:-8 40:-9 42:-9 43:-12 44:39 76:-17 88:51 90:28 92:-8 98:28 100:-8 101:37 123:18
@wire end	9:9
end $	9:9 27:23 35:9 38:10 69:17 71:-8 86:13 88:18 91:-10
when will	29:35 30:11 31:16
when _ we	9:14 11:16 28:31 29:15 114:-8
we _ out	0:10 9:8 22:13
out of	0:-12 1:-9 2:-17 4:-9 5:51 8:26 9:-14 16:-13 17:-9 19:-10 21:8 25:8 33:-13 35:35 38:-16 39:-10 40:-8 41:-10 47:22 56:8 61:10 62:18 65:-11 69:64 70:18 71:42 72:33 77:-21 78:-12 79:13 80:13 84:-8 85:33 86:38 90:-11 93:-8 94:-12 100:46 101:15 109:-9 121:15
doe _ shop	23:31 25:39 28:31 34:-8
out _ @wire	8:55 9:-12 20:9
out _ the	0:-8 5:12 20:10 21:15 22:15 34:8 35:22 38:-9 47:9 69:35 71:8 72:16 74:-15 80:27 81:-13 86:37 94:-9 99:10
long will	9:32
will @wire	18:39
long _ @wire	1:9 27:-12 32:8
will _ last	9:34 27:-8
will _ @wire	9:19 18:8
do $	0:-10 3:30 13:17 29:12 32:-11 34:65
reach==	9:20 41:14 86:17
long do	27:36 32:17
reach	9:20 41:14 86:17
@wire reach	9:20
how _ do	2:-8 16:19 18:9 24:50 27:29 30:-8 32:14
reach $	9:17
long doe	4:-12 27:47 32:32
how _ doe	4:-13 19:29 24:19 27:32 32:28 34:-11 123:45
doe _ do	32:-8 34:31
do _ last	27:9
our==	0:40 5:18 8:29 9:8 14:-9 16:-12 23:-9 24:9 27:-9 31:12 32:21 54:63 61:26 62:11 85:12 100:-10 114:15 116:-9 117:25 118:17 120:-9 123:-12
our	0:40 5:18 8:29 9:8 14:-9 16:-12 23:-9 24:9 27:-9 31:12 32:21 54:63 61:26 62:11 85:12 100:-10 114:15 116:-9 117:25 118:17 120:-9 123:-12
our wire	8:42 9:-8
doe _ wire	9:22 18:29 20:30 73:-12
will _ wire	9:13
when should	9:19 11:11 31:-9
when must	9:10 11:25 29:12
i order	9:27 31:10 32:15 49:-10 115:15
when _ i	9:22 11:15 26:59 28:23 29:-13 30:18 31:-15 123:-8
must _ order	9:8 10:17
when shall	9:11
day==	1:-8 9:25 10:-14 11:29 13:-17 14:-12 16:-8 17:-9 22:-10 23:-10 25:-10 28:18 30:75 32:-8 34:-9 46:43 47:-8 50:-9 51:-11 52:61 53:23 60:-14 61:18 64:-16 74:-8 80:8 85:-11 91:-8 98:-25 99:-18 100:41 104:-29 107:54 109:42 110:44 111:76 114:-8 123:27
^ by	8:-11 9:24 10:-10 11:11 21:10 26:11 29:13 32:30 40:-10 66:26 91:10
by what	9:11 37:-9 103:26
day	0:-19 1:-18 2:-8 5:-12 6:-10 7:-8 8:-24 9:42 10:72 11:78 13:-13 15:-9 16:-16 17:-15 18:-10 19:-9 20:-11 21:-8 22:72 23:-17 25:-15 26:37 27:-12 28:50 29:11 30:70 31:-11 32:19 33:-17 34:-14 35:-13 37:-9 38:-10 39:-9 42:-11 43:-8 45:-10 46:59 47:-11 49:-12 50:-13 52:52 53:18 60:-16 61:15 62:-10 63:-10 64:-19 74:-15 77:-11 82:-8 83:-8 84:-8 85:-13 86:-8 87:-13 88:-13 90:-9 91:-12 94:-10 97:-12 98:-31 99:-21 100:34 101:-11 103:-11 104:-40 105:-8 107:47 109:37 110:35 111:84 114:26 116:-15 117:12 119:32 120:57 122:-9 123:8
what day	9:10 29:11 30:38
by _ day	9:11
day _ i	14:10 30:26
by when	9:9 11:27
day _ we	114:13
order $	8:-25 9:12 10:33 12:-9 27:17 29:-13 31:115 32:20 33:-8 34:-10 49:46 115:21 116:28 117:-18 118:17 119:10 123:-12
buy $	10:74
shall _ need	10:8
by _ must	11:17
get==	0:-9 1:-12 2:19 5:13 7:13 8:-17 9:30 11:-12 17:-10 19:35 20:-11 21:-11 28:-10 29:46 31:-9 32:50 33:18 41:-8 44:9 56:27 63:15 74:-8 80:8 88:-13 98:8 106:-8 118:10
get	0:-25 2:17 5:34 7:12 8:-24 9:27 13:10 14:-8 17:-13 19:33 20:-13 21:-12 26:-8 27:-9 28:-14 29:37 31:-11 32:49 35:15 36:-13 38:10 41:-9 44:8 50:8 51:-9 56:25 63:13 72:25 74:-8 82:8 88:-14 100:23 104:8 106:-10 118:9 123:70
to get	29:8 63:20 98:11
have _ get	29:11
get $	5:16 33:10
@wire should	8:10
much _ should	8:12
the _ shall	52:15 98:14 103:18
@wire _ i	65:12 81:11
how is	13:90 16:17 25:26 27:-11 29:-14 34:14 93:-10
the supply	9:14
is _ supply	9:13
how _ supply	9:9
how are	8:35 9:-10
supply of	9:15
stand==s	11:16 16:21 17:12 29:-20 88:12 91:72
stand	2:-8 11:12 13:35 14:16 16:15 17:71 18:-8 25:45 29:-27 40:-17 71:-8 76:-9 88:25 90:12 91:76 101:8 102:11 105:10 123:-10
doe _ reach	9:10 41:14
doe _ last	9:15 19:17 31:-10
last _ the	92:9
wait==	9:32 12:-9 17:-9 28:9 30:14 37:-10 46:-9 64:-8 86:-9 106:-8 107:12 109:-8 112:67 113:118 122:15 123:-18
what job	1:19 9:12 11:12 12:33 29:-11
wait	6:-8 9:23 11:13 12:57 13:-15 15:-10 17:-12 19:-9 23:-14 29:-16 30:13 31:47 37:-11 42:-16 46:-12 50:9 64:-10 86:-12 106:-10 107:10 109:-8 112:60 113:173 117:13 122:14 123:-22
job wait	9:25
wait for	9:31 11:-15 12:-11 19:-8 23:-10 30:11 31:29 42:-8 112:-8 113:85 117:15
what _ wait	9:11
job _ for	9:25 30:15 45:11 46:12 64:26 107:10 114:13
wait _ @wire	9:22
which _ wait	9:15
job would	9:8
would wait	9:8
job _ wait	9:8 113:41
wait _ the	9:12 113:35
job are	11:8 12:19 29:34
short for	22:19 39:9 41:-11 78:10
job _ short	44:-19 74:43 88:-11
need of	6:9 121:13
what _ open	9:10 12:14
job _ of	9:19
much do	8:8 24:23
take of	9:12
much _ the	19:17 24:9 41:14
do _ queu	9:9
queu _ of	9:9
take _ @wire	32:9
job take	9:8
take _ the	37:19 71:14 82:11 120:10 122:28
use of	9:9
the _ use	82:15
use _ @wire	18:11
what _ the	1:-9 4:12 6:-9 8:-20 9:15 11:-9 12:-17 13:-16 14:21 16:19 17:14 18:14 19:24 20:20 21:48 23:8 24:-8 25:-32 26:-15 27:31 28:9 30:19 31:-11 32:62 33:19 34:69 122:-11
each==	0:-17 3:-8 4:30 5:12 7:15 9:23 14:31 16:12 17:-12 20:-8 24:10 29:12 30:-9 49:47 51:30 53:-12 65:25 67:-8 69:-14 78:-16 97:-8 98:11 108:-9 115:15 116:8 120:13
week==	8:-14 10:11 11:38 12:-8 14:-9 15:-10 16:-12 17:-10 20:-10 23:-9 25:-18 26:43 27:-9 28:67 29:44 30:45 33:-9 46:21 49:-22 51:9 52:36 53:22 60:-8 61:-8 62:-10 65:-15 99:-8 100:45 105:-10 107:-8 108:31 109:39 110:-16 111:-11 117:48 118:-8 119:8 123:24
each	0:-17 3:-8 4:30 5:12 7:15 9:23 14:31 16:12 17:-12 20:-8 24:10 29:12 30:-9 49:47 51:30 53:-12 65:25 67:-8 69:-14 78:-16 97:-8 98:11 108:-9 115:15 116:8 120:13
week	0:-8 8:-17 9:9 10:25 11:91 12:-9 13:-8 14:-11 15:-11 16:-16 17:-13 19:-8 20:-11 21:-8 22:13 23:-13 25:-22 26:37 27:-13 28:70 29:85 30:41 31:-8 33:-12 34:-10 46:20 49:-27 51:8 52:34 53:20 60:-9 61:-9 65:-16 98:-9 99:-9 100:42 104:-9 105:-11 107:-9 108:30 109:38 110:-18 111:-12 116:-16 117:43 118:-10 119:19 120:65 123:19
week $	8:-13 10:12 11:36 15:-10 16:-9 23:-8 25:-14 26:29 28:59 29:35 30:9 46:24 49:-24 51:17 52:16 65:-15 100:28 108:28 110:-9 115:-9 116:-9 117:52 119:12 120:59 123:30
month==	8:-20 18:-11 20:65 21:45 33:11 62:10 68:-12 78:-9
month	8:-20 18:-11 20:64 21:44 22:16 62:10 68:-12 78:-9
a month	9:8
month $	8:-16 20:38 22:17 33:12
through==	0:11 4:25 9:17 12:-10 13:-8 16:-8 17:-9 20:13 23:-9 27:24 28:8 29:-18 33:39 38:-8 43:36 49:-9 51:30 65:9 70:17 74:-27 76:27 78:-9 79:14 80:23 81:-9 88:-8 94:10 107:10 109:16 111:23 118:17 121:13 123:-16
per==	14:12 19:10 24:13 67:13
through	0:11 4:25 9:17 12:-10 13:-8 16:-8 17:-9 20:13 23:-9 27:24 28:8 29:-18 33:39 38:-8 43:36 49:-9 51:30 65:9 70:17 74:-27 76:27 78:-9 79:14 80:23 81:-9 88:-8 94:10 107:10 109:16 111:23 118:17 121:13 123:-16
go through	27:29 33:15
per	14:12 19:10 24:13 67:13
we _ through	9:20 121:14
go _ a	38:13
need a	0:21 11:11 20:21 102:23 123:14
a week	119:11
forecast==	8:-14 9:65
forecast	8:-14 9:65
stock forecast	8:-11 9:43
forecast of	8:-9 9:27
stock _ of	9:16
forecast _ @wire	9:28
forecast for	9:18
forecast _ the	9:17
forecast $	9:20
outlook==	9:13
outlook	9:13
outlook _ the	9:13
supply for	49:10
the forecast	9:17
day==s	0:-13 1:-10 8:-20 9:17 10:85 11:49 12:10 16:-8 22:82 26:33 28:32 29:8 32:27 33:-9 35:-10 45:-8 46:15 49:-11 52:-9 54:13 77:-10 78:-8 87:-11 102:12 104:-11 110:-8 111:8 114:34 116:-12 117:8 119:38 120:62 123:-19
^ order	9:-10 10:26 31:-15 49:-26 50:38 115:133 116:23 117:76 118:35 119:-14 120:-8 123:-11
order list	10:89 31:-8
day #n	22:12 120:10
#n day	0:-12 1:-9 10:79 11:36 22:72 26:38 28:21 29:13 30:-9 32:31 33:-8 35:-10 45:-8 46:25 49:-10 74:-8 77:-9 85:-11 98:-18 104:-18 114:34 116:-12 117:10 119:41 120:33 123:47
#c	0:-33 1:-32 2:-15 3:-45 4:-18 5:41 6:-13 7:-17 8:-47 9:-40 11:-26 12:-16 13:-19 14:-14 15:-10 16:75 17:-19 18:-17 19:-27 20:16 22:-24 23:-26 24:-16 25:-30 26:-33 27:-11 28:-17 29:-34 30:-8 31:-36 32:-24 33:-21 34:-17 35:-16 36:-8 37:-17 39:-18 41:-10 42:-21 43:166 44:-18 45:37 47:-13 48:-15 49:82 50:33 52:15 53:-11 54:55 55:-18 56:-15 57:26 58:157 59:220 60:-17 61:-19 62:-17 63:-23 64:-19 65:16 66:147 67:106 68:30 69:-12 71:28 72:50 73:-9 74:-28 75:-31 76:-16 77:-16 78:11 79:-17 80:31 81:50 82:-12 83:-12 84:113 85:-32 86:57 87:-22 88:-13 89:-10 90:-12 91:-32 92:-8 93:-9 94:-14 95:-12 96:-13 97:-52 98:67 99:-21 100:19 101:-9 102:-16 103:-11 104:-27 106:-28 107:-23 108:-12 109:-26 111:-14 113:-15 114:-11 115:44 116:39 119:40 120:61 121:-13 122:-16 123:-33
)~"
R"~(day _ day	28:-8 104:-11 109:8 110:10
#n _ #c	43:34 45:-12 49:21 65:21 71:9 110:12 112:9 119:10 123:20
#c $	0:-8 1:-8 5:51 9:-8 11:-10 16:12 20:47 21:12 38:10 41:9 43:32 46:10 54:12 57:34 58:18 59:72 72:42 84:13 86:23 106:-13 107:-9 112:16 116:19 119:-8 123:-11
order==s	5:13 6:-9 9:-10 10:29 11:-12 31:200
of order	10:39 31:-18 100:24 116:13 117:35
list _ order	10:37
make==	0:31 2:10 3:-15 7:17 16:-8 33:-13 35:17 40:-9 41:-8 54:29 57:12 60:67 68:24 77:41 98:34 103:40 112:9 114:12 120:-8
^ make	0:-8 10:9 35:20 54:30 57:8 60:69 77:32 98:31 103:27
make me	10:9
me order	10:9
the list	4:-10 6:18 10:28 31:-15 34:25 47:20 56:18 57:14 64:-8 74:8 97:16 99:38 119:13 121:24
show _ order	31:22
shop==ping	6:-10 9:31 10:50 23:-8 56:11
shop list	6:-10 9:32 10:50 23:-8
me _ shop	10:26
shop _ for	6:-9 9:31 10:40 23:25 34:-9
for _ day	0:-8 11:12 22:39 53:10 100:10 107:27
day $	1:-8 9:-9 10:23 11:12 12:11 16:-8 22:40 26:22 28:32 29:14 30:23 32:32 46:16 49:-8 52:31 85:-11 100:18 104:-9 107:68 114:25 115:8 116:-11 117:21 119:35
the next	10:17 11:20 26:17 27:16 28:16 29:8 31:41 35:40 43:43 106:21 123:-8
next #n	10:31 11:14 16:-10 26:20 28:38 29:17 35:41 43:9
make _ the	16:-9 114:16
for _ next	11:-8 26:9 28:10 29:22 100:37 104:-8 117:14
next _ day	10:34 11:13 26:20 28:28 29:19
#c day	120:20
the _ #c	59:30 66:16
the order	5:17 9:-11 10:24 13:17 15:26 31:44 47:8 115:14 116:39 117:17 118:18
buy now	10:17
to _ now	10:18 17:10 117:9
order now	10:23
today==	9:-9 11:19 12:-12 14:-8 23:-8 25:9 29:92 31:-8 32:-9 33:15 34:-14 43:-10 57:20 61:9 62:12 63:-16 97:22 104:15 107:21 109:73 123:39
today	8:-8 9:-15 11:40 12:-17 13:-11 14:-14 15:-12 16:-9 17:-11 19:-8 20:9 21:-8 22:-9 23:-13 27:-9 28:14 29:82 30:14 31:-16 32:-13 33:39 34:-17 39:-8 43:-12 46:21 51:-18 52:27 53:57 54:-9 57:17 62:9 63:-18 64:-8 74:-9 97:20 99:-8 100:15 101:-9 102:-9 104:21 105:27 106:-8 107:11 108:-11 109:72 110:40 117:66 120:-8
today $	9:-9 10:8 11:36 12:-9 14:-10 15:-10 23:-8 25:-12 28:22 29:20 31:-11 32:-8 33:31 46:28 52:17 61:-19 62:15 63:-13 97:22 100:15 105:32 107:20 109:70 110:-10 111:-8 117:31
this week	10:15 11:40 15:-9 25:-9 28:19 29:23 30:10 52:19 109:24
to _ this	10:11 11:-8 123:29
order==ed	8:-13 10:40 11:-10 29:-20 31:31 32:24 49:-16 65:-13 115:180 116:-15 118:31 119:-11 123:-12
to be	0:10 1:-13 4:14 5:21 9:14 10:36 11:28 13:-33 15:9 18:-14 22:15 23:-21 25:-8 27:12 29:13 30:-12 32:-10 36:28 39:15 42:-12 43:-9 46:10 47:21 50:25 54:-10 63:-11 64:10 68:13 71:-9 74:-8 80:22 82:30 83:-16 85:16 98:11 99:14 109:-11 113:16 121:25 123:-17
be order	10:56 11:-8 29:-11 31:-16 32:29
is _ be	0:20 10:21 36:20 39:18 50:-8 63:-8 64:18 82:21 98:14 99:15 113:23 121:16 123:-19
to _ order	9:15 10:51 29:-11 31:-13 49:22 116:-9
be _ now	10:20 100:12
has==	0:-24 2:-8 3:-18 4:-12 5:10 6:-10 8:-12 9:-19 10:12 11:-20 12:10 13:-29 14:19 15:47 16:-29 17:-14 18:-15 19:-14 20:-14 21:10 22:44 23:51 24:-11 25:8 26:71 28:-30 30:14 31:42 32:-20 33:37 34:-14 37:-14 38:-11 39:8 42:24 43:-13 45:-9 46:53 47:10 48:-16 52:-8 53:-8 54:-9 58:12 59:-8 60:-17 61:11 62:10 63:-29 64:43 68:-8 70:-8 73:22 76:8 77:21 79:22 80:-10 81:-8 83:-10 86:19 87:23 88:-16 89:8 90:-19 91:-8 93:48 94:-15 95:-9 96:-13 97:-14 98:24 99:-15 100:-11 101:-11 104:41 106:37 108:12 110:-19 112:24 113:-11 114:-14 116:24 122:-9
has	0:-24 2:-8 3:-18 4:-12 5:10 6:-10 8:-12 9:-19 10:12 11:-20 12:10 13:-29 14:19 15:47 16:-29 17:-14 18:-15 19:-14 20:-14 21:10 22:44 23:51 24:-11 25:8 26:71 28:-30 30:14 31:42 32:-20 33:37 34:-14 37:-14 38:-11 39:8 42:24 43:-13 45:-9 46:53 47:10 48:-16 52:-8 53:-8 54:-9 58:12 59:-8 60:-17 61:11 62:10 63:-29 64:43 68:-8 70:-8 73:22 76:8 77:21 79:22 80:-10 81:-8 83:-10 86:19 87:23 88:-16 89:8 90:-19 91:-8 93:48 94:-15 95:-9 96:-13 97:-14 98:24 99:-15 100:-11 101:-11 104:41 106:37 108:12 110:-19 112:24 113:-11 114:-14 116:24 122:-9
what has	5:17 10:14 21:14 22:26 29:-19 30:22 33:29 103:8
has to	5:18 10:15 27:16 29:-16 30:19 46:33 50:9 113:15
has _ be	5:20 10:18 11:14 29:-13 46:18 50:10
order today	10:8
be _ today	10:8
order with	31:13 115:11 118:13
i _ with	1:10 3:-9 11:12 16:9 17:20 41:-8 109:11 115:15 123:-11
with _ the	81:11 106:8 107:22 120:21
in _ next	10:14 11:11 28:17 29:-13 35:42 109:11
buy in	10:8
we _ with	11:31 13:11 17:18 20:16 29:11 34:-8 107:11
with _ #c	58:19 72:11 84:10
in _ day	10:46 11:-17 46:42 114:25 115:11 116:-8 117:17
order in	116:10
in #n	1:-8 3:-12 4:-8 7:12 10:42 11:-20 18:30 22:-10 44:-9 46:40 49:8 62:10 71:-17 74:44 76:15 80:-13 98:-10 103:29 114:23 115:10 117:15 120:-8
order _ #n	49:-12 115:33 117:38 119:9
wire shall	10:16
what _ shall	10:11
shall _ buy	10:11
wire should	9:-10 10:29
due==	9:-8 10:35 11:206 12:25 13:-11 22:-10 26:-10 28:-14 29:-26 31:17 33:-8 44:-10 46:147 49:-15 51:-12 54:50 64:-8 86:-8 108:-9 112:-9 114:-10 115:43 117:14 123:-17
due	9:-8 10:35 11:206 12:25 13:-11 22:-10 26:-10 28:-14 29:-26 31:17 33:-8 44:-10 46:147 49:-15 51:-12 54:50 64:-8 86:-8 108:-9 112:-9 114:-10 115:43 117:14 123:-17
^ due	11:87 46:-22
last #r	52:-8 109:10
day #r	111:12
last the	9:-9 19:21
day the	11:9 110:9
last _ job	11:9 33:-8 92:31
job _ day	11:17
day _ last	52:8
day _ #o	11:9 110:9
part==	11:12 26:17 87:12 109:11
#n last	11:8
part	11:12 26:16 87:12 109:10
morn	1:-8 3:-9 11:32 13:-11 16:-10 17:-8 18:-8 25:-15 26:51 28:-18 29:25 33:-15 42:14 43:11 44:8 49:11 52:24 73:10 74:-10 76:15 77:-10 94:30 95:8 96:15 98:-8 99:-10 100:48 101:-10 104:53 105:-8 106:25 107:13 109:28 110:27 111:-9 114:56 116:17 123:-24
morn job	76:19
#r day	110:13
day today	104:-12 110:8
tomorrow	1:-10 4:-8 5:-10 6:-9 8:-10 9:-15 11:47 12:-8 13:-15 14:-28 15:-11 16:-16 17:-10 23:-13 25:-21 26:62 27:-8 28:83 29:49 31:-14 32:-10 33:14 34:-11 37:-8 43:15 46:32 47:-10 50:-9 51:-12 52:68 53:43 54:-12 60:-9 61:-11 62:-10 63:-8 64:-9 72:-11 82:-8 86:-8 88:-12 90:-8 98:-15 99:-12 100:41 104:45 105:22 106:-12 107:-8 108:-16 109:36 110:47 111:54 112:-11 113:-8 114:42 117:83 118:-12 122:-9
day tomorrow	53:12 110:-10
day #o	26:9 110:10
december	0:-12 1:-8 11:22 12:-8 13:-11 16:-19 17:-8 23:-10 25:-9 26:23 28:63 29:25 30:84 37:-8 42:-12 43:-8 44:-11 46:47 49:-12 51:-19 52:75 53:34 54:-8 60:-10 64:-8 74:-12 88:-13 89:-8 94:-8 98:-11 100:19 104:16 107:-9 108:-14 109:72 110:37 111:90 115:8 117:66 123:-8
of december	11:21 16:-11 26:27 28:12 29:17 30:38 42:-9 46:53 52:19 53:30 104:8 109:10 110:24 111:15 115:8 117:34 123:-11
even	0:22 1:16 11:17 20:8 26:23 28:-8 29:8 52:15 53:8 65:11 109:35 123:-18
part even	11:8
@day	0:-21 1:-32 2:-18 3:-12 4:-18 5:-19 6:-13 7:-13 8:-26 9:-26 10:-15 11:57 12:-23 13:-30 14:-37 15:-26 16:-42 17:-31 18:-13 19:-16 22:-17 23:-26 24:-16 25:-51 26:70 27:-20 28:42 29:65 30:55 31:-30 32:-22 33:73 34:-26 35:-15 36:-11 37:-16 38:-9 41:-10 42:-21 43:-12 44:-34 45:-11 46:113 47:-17 49:-12 50:-13 51:250 52:90 53:58 54:-27 55:-8 56:-17 57:-19 58:-15 59:-12 60:-23 61:-43 62:-33 63:-23 64:-30 65:-16 66:-10 67:-8 68:-12 69:-18 70:10 71:-11 72:-11 73:-8 74:-30 75:-11 76:-17 77:-15 78:-14 80:-8 81:-15 82:-13 83:-12 84:-8 85:-11 86:-19 87:-10 88:-29 89:-10 90:-21 91:-12 92:-16 93:-25 94:9 97:-14 98:-28 99:-21 100:60 101:-10 102:-24 103:-15 104:73 105:74 106:-12 107:-22 108:202 109:127 110:95 111:96 112:-26 113:-18 114:111 115:20 116:15 117:151 118:-25 119:-13 120:-17 121:-13 122:-18 123:11
next @day	16:-8 17:-8 20:18 25:-8 26:41 29:-22 46:37 49:-10 51:-40 52:40 53:45 61:-8 104:39 105:39 108:-27 110:48 111:37 114:20 115:17 116:15 117:38 123:-51
@job last	11:8
last #o	52:8
due _ this	11:8
this _ job	75:13 76:19
job _ last	11:13
last _ last	109:9
today _ #r	53:31
part _ job	11:10
morn _ job	76:19 104:11
day _ job	11:19 46:10
the _ day	9:22 11:15 30:28 46:20 111:8 117:9
#n _ tomorrow	53:19 114:14
tomorrow _ job	123:37
#r _ tomorrow	104:10
#n _ #o	12:23 30:-12 41:11 46:29 90:13 92:9
day _ of	26:9 46:36 110:10
#o _ december	11:21 16:-11 26:27 28:12 29:17 30:38 42:-9 46:53 52:19 53:30 104:8 109:10 110:24 111:15 115:8 117:34 123:-11
today _ the	43:-8 123:39
@job _ next	112:24
day _ @day	53:14
next _ job	16:-9 17:9 27:18 29:19
@day _ the	11:24 51:9 100:42 109:22 123:-11
@day _ #o	20:9 30:24 46:-13 53:17 110:16 111:-10
)~"
R"~(last _ of	44:43 52:8 82:11 122:31
of _ job	12:-9 14:12 17:8 23:12 35:11 69:-12 71:14 94:10
due the	11:11
week next	52:9
today day	53:8
afternoon	8:-9 11:28 26:36 28:-10 29:19 33:-12 39:16 42:17 51:-11 52:34 53:18 75:-10 100:17 104:42 108:-9 109:65 110:-11 123:-8
part afternoon	26:8
#n week	10:15 11:56 22:14 29:28 62:10 116:-10 119:12 120:60
@job by	30:26 46:22 75:10
by the	0:16 12:8 30:39 40:25 65:-11 66:24 75:15 78:39 86:10 97:9 120:11 123:-12
the _ week	26:9 28:11 29:13
of _ day	28:10
today _ next	20:12
the _ part	87:12
afternoon _ the	104:9
#n _ next	16:19 17:27 29:-10 110:11 112:11
next _ @job	16:18 27:21 29:-14
@job _ tomorrow	46:10 114:8
tomorrow _ the	109:11
job _ by	75:17 96:13
by _ #o	30:18
due job	46:17
last @day	33:22 49:10
#n by	39:9 45:9 68:13 75:17 78:11 84:32 91:-8 96:21
by #r	46:19
day @day	28:-18 52:-9 109:10 110:10
recheck	2:-8 11:198 13:-13 16:-8 17:-30 22:-8 26:-10 28:-12 29:-35 31:-8 33:-11 37:-13 42:-22 43:-9 44:219 46:-10 54:73 74:-15 86:-8 88:-67 96:-9 102:14 103:34 107:-12 112:-8 114:199 123:-19
due _ #n	10:42 54:17
#n _ even	0:24
#n _ @day	51:-11 93:-14 94:9 110:36 114:30 117:44 123:17
december _ job	30:13
today _ recheck	11:8
only _ day	53:9 110:-9
fall==s	11:46 50:23 52:-11 111:35 118:17
fall	11:65 46:-11 50:23 52:-11 111:35 118:17
fall due	11:44
due on	115:18 117:13
on #r	16:13 26:11 52:31 53:13 104:12 105:17 109:31 110:-11 111:15 117:14 123:-13
is due	11:27 29:-11 46:30 54:11
what _ due	11:80 29:-11
due $	11:41 12:-10 31:23 46:35
tonight==	11:20 23:-18 26:22 104:39 109:47 123:-18
is anyth	11:45 23:11 26:26
anyth is	11:12
to do	10:-14 13:48 16:-8 27:21 28:-8 29:50 30:10 34:-8 63:-8 122:9 123:-8
tonight	11:20 23:-18 26:22 104:39 109:47 123:-18
anyth _ to	29:10
is _ do	11:12 13:25 17:-14
tonight $	11:20 23:-17 26:23 104:34 109:39 123:-17
for next	11:40 28:10 29:-11 109:11
do _ next	112:17
for _ @day	51:18 53:-9 109:13
@day $	1:-11 8:-11 9:-10 11:23 12:-12 13:-9 14:-26 15:-16 16:-9 17:-12 20:10 23:-9 25:-31 26:58 27:-9 28:135 29:51 30:26 31:-14 32:-9 33:84 34:-12 44:-15 46:66 49:-12 51:13 52:43 53:-19 54:-8 60:-11 61:-16 62:-11 64:-9 74:-9 93:-18 99:-8 100:13 102:-9 104:-21 105:17 106:-10 107:-12 109:74 111:-28 112:-8 114:21 116:27 117:52 118:-8 123:61
what fall	11:32
that is	1:-8 3:-15 8:-13 13:-10 23:20 29:-9 31:-9 35:18 38:9 41:10 42:28 43:11 52:17 53:9 70:9 74:-12 76:-11 82:8 83:25 90:19 92:24 105:9 107:16 111:-10
due in	10:41 11:22
in #r	81:22
that _ due	11:11
on by	11:14
by next	30:11 46:14
is _ on	1:-10 8:-17 11:10 12:14 13:-16 15:48 17:13 25:22 29:19 31:21 32:46 33:-10 43:-11 46:9 109:30 111:-8 117:10 123:-16
on _ next	16:22 106:23
by _ @day	30:11 46:14
com==ing	8:-27 9:-10 11:43 13:28 23:-9 25:-12 26:24 29:-14 31:82 47:14 53:8 61:8 111:-9 116:23 117:49 118:56 123:-23
com	8:-27 9:-10 11:43 13:28 23:-9 25:-12 26:24 29:-14 31:82 47:14 53:8 61:8 111:-9 116:23 117:49 118:56 123:-23
are com	11:27
what _ com	11:31 29:-16 31:36
com $	8:-22 31:78 116:23 118:39 123:-16
com up	11:26
are _ up	11:33
is com	11:14 13:9 29:-16 31:32 116:14 117:56
is _ up	11:41 88:59 90:-11 123:-13
com for	11:12
for tomorrow	26:8 29:39 100:-11
tomorrow $	9:-8 11:15 14:-19 16:-8 25:-10 26:17 28:80 29:35 31:-8 33:21 46:36 52:33 100:12 104:-11 105:35 107:-17 111:25 116:-9 117:36 123:8
for @day	26:8 29:39 109:-11 114:13 117:14
com on	117:15
on today	11:11 46:8 52:20 53:8 104:18 105:13 111:21 123:-8
up on	11:31 17:-17 24:45 29:-12 90:16
on this	11:10 29:27 44:-9 114:24
this afternoon	11:11 29:24 109:23
up _ this	51:-10 53:16
on _ afternoon	11:25 29:14 52:18 104:9
afternoon $	11:8 26:31 29:26 33:-8 39:17 42:18 52:21 75:-10 100:11 109:24
show _ is	11:10
until==	2:-10 9:8 11:16 13:-8 20:22 26:-14 27:-12 28:10 32:14 33:-11 36:10 42:-14 46:31 53:68 64:-12 70:8 80:8 88:8 100:47 101:-8 110:10 111:-10 112:-10 113:56 114:12 116:-11 117:34
show what	29:-8 33:22
until	2:-10 9:8 11:16 13:-8 20:22 26:-14 27:-12 28:10 32:14 33:-11 36:10 42:-14 46:31 53:68 64:-12 70:8 80:8 88:8 100:47 101:-8 110:10 111:-10 112:-10 113:56 114:12 116:-11 117:34
until the	109:17
on _ the	34:17 73:10 88:9 90:14 106:13 110:14 111:-10
until _ #o	109:17
me what	0:9 8:22 11:25 25:8 33:9
due for	11:12
me _ is	11:25
by @day	26:9 29:-8 30:62 46:13
on _ @day	11:10 52:-8 53:17 111:14
ready==	11:9 12:-14 13:21 29:83 30:56 42:-10 46:29 98:9 105:12 107:9 123:37
job have	12:22
ready	11:9 12:-14 13:21 29:83 30:56 42:-10 46:29 98:9 105:12 107:9 123:37
be ready	11:20 12:-8 30:49 42:-8 46:32 123:-23
which _ have	23:42 25:20 32:9
job _ to	16:8 29:-9 43:-10 46:13 63:11 74:63 81:-12 82:22 92:-11 96:-19 114:18 123:14
have _ be	4:17 9:17 10:-8 11:37 27:-9 29:-19 37:13 80:11
to _ ready	11:24 29:-11 46:9
ready $	11:16 12:-13 29:30 30:10 98:10 123:66
done==	0:-19 1:-12 2:-15 4:-14 8:-17 10:-16 12:15 13:49 16:-29 17:-12 18:-13 19:-8 23:-14 24:-8 25:10 26:-11 27:28 28:-9 29:-18 30:10 31:-11 32:-10 33:73 34:-9 35:-10 36:-8 39:9 42:134 43:91 44:13 45:-11 46:10 54:9 60:-9 62:-9 64:-20 70:21 72:11 74:8 76:-8 81:-8 86:-11 88:-10 90:-10 94:12 96:-9 98:-8 99:31 100:-10 102:70 106:-24 107:45 112:-18 113:42 114:-9 123:25
befor==e	0:44 1:-9 5:-12 9:9 11:14 14:10 25:10 34:16 38:11 40:-9 43:12 44:-11 59:11 62:9 63:-11 98:9 106:-8 113:91 114:22 117:8 123:-25
must be	2:13 3:10 11:14 29:-9 46:21 59:15 76:10 79:-10 97:15 119:17 121:8
done	0:-19 1:-12 2:-15 4:-14 8:-17 10:-16 12:15 13:48 16:-29 17:-12 18:-13 19:-8 23:-14 24:-8 25:10 26:-11 27:28 28:-9 29:-18 30:10 31:-11 32:-10 33:73 34:-9 35:-10 36:-8 39:9 42:146 43:90 44:13 45:-11 46:9 54:9 60:-9 62:-9 64:-20 70:21 72:11 74:8 76:-8 81:-8 86:-11 88:-10 90:-10 94:12 96:-9 98:-8 99:31 100:-10 102:70 106:-25 107:45 112:-19 113:41 114:-9 123:25
be done	12:25 13:-18 27:38 29:18 46:10 54:19 63:14
done on	13:34 25:21 27:18 29:-13 102:9
befor	0:44 1:-9 5:-12 9:9 11:14 14:10 25:10 34:16 38:11 40:-9 43:12 44:-11 59:11 62:9 63:-11 98:9 106:-8 113:91 114:22 117:8 123:-25
on befor	11:17
befor the	6:9 9:15 113:30
what _ be	5:20 11:18 29:-8
must _ done	11:18
be _ on	13:-10 17:10 27:20 28:29 46:13 51:-8 52:10 53:16 109:-9 110:-15 111:9
befor _ #o	11:8
done $	11:-13 12:25 15:16 16:-9 17:-8 29:18 30:23 42:42 43:11 44:10 63:-9 64:-9 107:36 112:-10 113:30 123:38
job has	12:25
which _ has	1:9 10:10 12:8 15:15 29:12 33:21
by tomorrow	11:18 29:-10 46:17 123:33
done _ by	11:20 33:13
need _ be	9:11 11:13 37:10 121:10
done by	11:24 63:15
be _ by	11:8 26:10 29:-8 46:15 63:14 123:34
promis==ed	10:-10 11:123 13:-12 29:-27 30:-13 46:91 115:13 116:-17 117:67 119:-12
job is	11:8 13:-12 15:30 29:13
promis	0:-9 2:38 6:-13 9:-9 10:-14 11:107 12:11 16:-15 18:-8 23:-9 26:-10 28:-9 29:-33 30:91 31:-10 33:19 34:41 42:-8 46:173 82:-10 83:-10 104:-9 107:-12 112:-8 115:11 116:-19 117:62 119:-13 123:-16
is promis	46:36
promis for	11:45 29:-13 30:15 46:46 117:12
job _ promis	11:13
promis _ next	11:17
is out	11:11 28:18 85:8 86:8 100:8
out on	11:8 38:12 74:-10 96:12
on _ #o	16:-11 26:14 33:26 40:12 44:-9 46:23 53:31 100:9 109:-10 110:19 111:27 114:11 116:8 117:17
by _ of	11:13 21:10
december $	11:21 28:76 30:23 42:-9 46:91 52:-20 53:-30 109:34 110:-12 111:16 117:53 123:12
job _ out	5:18 35:11 47:21 69:20 70:18 77:-22 86:20
job _ due	11:22 12:-11 46:18
due _ on	12:23
out in	20:10 90:8
which _ goe	16:40
going==	11:-19 12:-19 13:-10 25:11 29:50 53:11 57:10 64:14 82:24 92:9 96:9 106:19 107:25 111:9 123:11
going	11:-20 12:-19 13:-10 20:13 21:-11 25:11 29:50 53:11 57:10 64:14 82:24 92:9 96:9 106:19 107:25 111:9 123:11
is going	82:25
job _ going	12:-16 29:31
is _ due	31:8 46:21
are out	42:11 80:13
come==	1:-16 2:-14 4:12 5:31 8:-11 9:-26 10:12 12:-9 13:-11 19:24 21:-8 22:-16 25:25 26:-8 27:-13 28:24 29:-20 31:78 32:15 33:15 41:-21 44:8 61:-9 62:33 65:-13 67:12 71:8 72:-17 87:24 92:9 94:8 97:8 109:31 110:22 112:8 115:8 116:49 117:13 118:38
come	1:-15 2:-22 4:10 5:25 8:-14 9:-32 11:-19 12:-10 15:-8 16:9 17:-14 18:-11 19:17 20:9 21:-9 22:-8 23:-17 24:-8 25:22 26:-11 27:9 28:17 31:87 32:22 34:-10 40:9 41:-27 42:-8 46:-9 47:-11 48:8 49:-8 54:-8 55:8 58:24 62:20 66:10 67:9 74:-14 76:-8 87:19 88:-12 92:24 104:-10 108:18 109:15 110:38 112:20 113:23 114:-8 115:18 116:58 117:59 118:36 119:-8
)~"
R"~(what _ come	5:11
due _ the	11:41
in _ #o	0:10 3:20 11:10 110:8
fall==	11:19 46:-10
on tomorrow	52:14 53:8 110:21 114:9 117:18 123:-15
are due	12:-8 54:29
are _ on	17:10 43:13 51:29 53:-18 88:-9 111:26
on #o	28:-8 52:10 53:20 117:11
due _ #o	11:-9 12:18
on _ of	16:14 23:12 39:23 51:19 52:8 53:20 68:14 88:-11 89:8 109:12 110:-11 117:10
date==s	11:40 29:57 31:12 123:9
date	9:28 11:50 12:15 16:-9 19:-8 26:-8 29:67 30:14 31:8 46:83 116:-8 117:25 123:34
due date	11:21 12:17 46:29
due day	46:26
day on	110:29
the week	28:10 29:15
day _ the	28:11 46:17
on _ week	28:19 29:-8
the due	11:14 46:14
the _ date	11:14 117:13
date _ #r	46:12
promise==s	11:9 18:10 29:12 52:14
promise	11:9 18:10 29:12 52:14
on tonight	11:9 104:9 109:18
day for	28:11 30:9
for #r	16:13 28:8 30:14 46:17 109:14
due _ for	11:13
day _ #r	111:14
look==	0:18 8:16 11:47 13:48 16:-9 17:26 29:-15 43:-8 44:48 57:45 60:31 80:9 88:21 89:-14 94:-15 106:-9 114:120 123:8
again==	0:-12 1:-15 2:24 4:-10 5:-8 9:-10 11:29 12:-9 13:-18 14:-9 15:-8 16:20 17:-16 25:-12 26:-10 27:-10 28:-12 29:-19 30:-8 33:-19 34:-12 35:-14 36:-9 37:60 38:-11 39:-10 41:-15 42:-13 43:21 44:42 46:-11 47:9 50:42 52:-11 53:-13 57:-9 60:-11 62:103 63:-11 64:9 69:-16 70:-10 71:24 74:-15 77:53 82:-13 83:15 85:13 86:-9 88:-16 90:-16 92:-9 94:36 95:-8 96:-12 98:-13 100:-24 101:139 103:46 104:-8 105:-9 106:19 107:-10 108:-12 109:-10 110:-13 111:38 112:14 114:96 116:-10 123:-11
look	0:16 1:-11 2:-8 8:16 11:50 13:38 16:-12 17:20 29:-18 33:-9 38:-8 42:-15 43:-10 44:90 46:-8 57:65 60:55 62:-11 63:-9 64:-10 76:-9 80:8 88:117 89:-16 90:-11 94:-18 96:-10 101:-9 110:-8 112:-9 113:-9 114:107 123:18
i look	17:9 44:16 93:9
look at	8:9 11:56 29:-12 44:44 57:14 80:11 94:-11 114:36
again	0:-12 1:-15 2:24 4:-10 5:-8 9:-10 11:29 12:-9 13:-18 14:-9 15:-8 16:20 17:-16 25:-12 26:-10 27:-10 28:-12 29:-19 30:-8 33:-19 34:-12 35:-14 36:-9 37:60 38:-11 39:-10 41:-15 42:-13 43:21 44:42 46:-11 47:9 50:42 52:-11 53:-13 57:-9 60:-11 62:103 63:-11 64:9 69:-16 70:-10 71:24 74:-15 77:53 82:-13 83:15 85:13 86:-9 88:-16 90:-16 92:-9 94:36 95:-8 96:-12 98:-13 100:-24 101:139 103:46 104:-8 105:-9 106:19 107:-10 108:-12 109:-10 110:-13 111:38 112:14 114:96 116:-10 123:-11
at again	11:20
this even	11:11 26:9 52:13 109:10
do _ look	11:25 114:-8
i _ at	17:9 42:12
look _ again	11:20
at _ this	94:11 116:12
even $	11:10 20:10 26:11 28:-8 29:9 52:13 53:10 109:13
recheck==	11:61 13:-9 17:-12 28:-8 29:-12 42:-16 44:81 54:55 88:-38 102:18 106:-9 107:-9 114:201 123:-13
i recheck	11:29 17:-12 114:24
in today	28:9
we recheck	114:18
check==	0:-20 3:32 11:20 17:38 18:17 29:-14 34:-8 73:-11 113:10 114:46 123:18
check	0:-21 3:32 11:19 17:37 18:16 29:-15 34:-10 40:11 73:-12 90:15 93:10 94:-8 109:24 113:9 114:45 123:12
i check	17:40 29:-11
check again	11:17
again on	24:19 114:33
befor @day	11:15 117:9
do _ check	11:9 17:40 29:-11
we check	11:8
we _ again	114:13
again $	1:-9 2:33 11:19 23:-13 28:-8 29:-10 33:-12 37:70 39:-8 52:-9 53:-11 62:40 64:14 69:-9 71:18 74:-10 76:10 77:23 82:-11 83:17 85:8 88:-9 90:-11 94:19 98:-8 100:-12 101:72 103:21 106:29 108:-10 111:41 112:19 114:19 122:10 123:-11
have _ recheck	114:15
recheck $	11:14 44:9
until @day	11:11 46:9 53:11 110:10 114:8 123:26
in _ @day	28:10 51:-9 53:19 108:34 109:-15
we look	11:30 114:10
we _ at	11:27 12:16 51:8 52:10 111:-8
what need	11:23 25:14 29:9
look==ed	44:60 114:-11 123:13
a look	60:12
what _ a	11:16 16:12 27:13 30:-8
a _ at	26:19 43:11 112:16
at _ #r	40:9
a recheck	11:8 54:15 102:19 103:9
need _ again	2:11
recheck for	11:22
recheck _ @day	114:15
next week	16:-10 26:28 28:34 30:39 49:-21 52:17 65:-14 100:45 108:-8 109:33 117:9 123:40
be _ for	11:18 22:18 23:-10 27:10 29:-17 36:31 37:10 82:23 90:20 109:11 123:-8
for _ week	11:30 22:16 28:20 29:-10 109:8
recheck==ed	17:-16 44:136 74:-13 88:-18 114:8
want a	13:12 50:10
job _ recheck	114:21
recheck _ due	11:-19 54:42
recheck are	54:29
recheck==s	11:140 29:-22 54:19 114:-10
in by	49:8
to _ in	29:13 45:13 53:-9 54:16 60:19 62:9 104:9 121:10 123:-9
which recheck	11:12
recheck is	54:13
for #o	28:9
is _ tomorrow	43:12 52:27 100:13 101:-8 110:8
^ any	0:24 1:-8 5:8 8:-11 9:-10 11:61 17:47 22:17 23:43 30:15 31:23 36:-9 46:-13
the recheck	11:29 44:52 54:23 88:-17 114:45
wait==ing	9:-9 11:19 12:66 23:-9 28:-14 29:-12 31:49 50:9 117:14
wait on	28:-11 31:24 113:47
on next	16:17 28:9 29:-15 51:-15 52:-8 53:19 111:15
which the	28:-10 108:11
overdu==e	11:160 23:-8 29:-8 31:14
overdu	11:160 23:-8 29:-8 31:14
overdu $	11:67 31:15
past==	31:11 53:11 88:-8 92:39 106:13 110:15
are is	88:20
past	31:11 53:11 88:-8 92:39 106:13 110:15
job _ is	0:-9 3:-8 4:-9 11:-21 13:-47 15:-19 16:-9 17:-32 18:-10 23:-11 29:-14 35:-8 40:22 41:10 42:31 44:8 46:28 47:39 63:42 64:57 71:-11 74:33 75:13 77:8 83:-10 86:39 88:9 92:-13 93:23 106:23 107:28 112:36 123:34
^ overdu	11:71
behind==	11:28 29:9 64:-8 68:14 76:10 92:10 113:41 123:-11
behind	11:28 29:9 64:-8 68:14 76:10 92:10 113:41 123:-11
behind with	11:12
with anyth	11:44
behind _ anyth	11:12
am==	2:-11 6:10 9:21 13:-10 17:-14 23:15 29:37 30:-9 32:11 33:-11 41:-14 42:38 50:15 51:15 59:9 63:11 64:16 74:-9 81:-10 86:-9 88:12 96:-9 106:68 107:62 109:30 110:29 112:12 121:-8 122:-8 123:35
am	2:-11 6:10 9:21 13:-10 17:-14 23:15 29:37 30:-9 32:11 33:-11 41:-14 42:38 50:15 51:15 59:9 63:11 64:16 74:-9 81:-10 86:-9 88:12 96:-9 106:68 107:62 109:30 110:29 112:12 121:-8 122:-8 123:35
^ am	11:13 42:9 107:27
am i	11:8 23:23 27:9 29:48 106:-8 109:-11
i behind	11:9
am _ behind	11:9
overdu with	11:12
with someth	11:10
overdu _ someth	11:10
someth $	11:10 26:8
press==	0:-9 1:-9 2:-9 4:-11 5:-9 6:-8 8:-10 9:-12 11:67 12:-8 14:-13 15:-14 16:129 17:-20 22:-8 23:-13 24:-13 25:64 26:67 27:-12 28:-28 29:30 30:-12 31:-14 33:-24 36:-9 37:-12 39:-8 42:-20 43:-57 44:-13 46:-12 47:-11 51:-14 52:-12 53:-17 54:60 56:-14 61:-11 62:-11 63:-10 64:-8 74:-13 82:-12 85:30 88:-10 90:-8 96:-8 97:16 98:90 99:28 100:152 101:73 103:-21 104:105 105:74 106:-12 107:-12 108:-9 109:-12 110:-9 111:-13 112:-10 113:-8 114:-11 116:-10 117:-13 118:-8 122:-10 123:31
press	0:-20 1:-20 2:-23 3:-16 4:-22 5:-19 6:-20 7:-11 8:-20 9:-26 10:-13 11:89 12:-17 14:-29 15:-41 16:188 17:-43 18:-12 19:-14 20:-13 21:-12 22:-16 23:-30 24:-10 25:201 26:72 28:-45 29:9 30:-22 31:-22 32:-28 34:14 35:-13 36:-14 37:-24 39:-14 41:-8 42:-64 43:254 46:-24 47:-21 50:-9 51:-22 52:-20 53:-26 54:66 56:-20 57:-12 58:-9 59:-12 60:-13 61:-19 62:-17 63:-23 64:-26 68:-8 69:-12 70:-11 71:-8 72:-14 73:-9 74:-33 75:-10 76:-19 77:-11 80:-10 82:-19 83:-17 85:19 86:-14 88:-26 89:-14 90:-20 91:-12 92:-14 93:-15 94:-18 95:-10 97:-8 98:171 99:72 100:182 101:109 102:78 104:138 105:138 106:8 107:-28 108:-11 109:-22 110:-27 111:-19 112:-26 113:-23 114:-8 116:-15 117:-18 118:-12 119:-9 120:-12 121:-16 122:-17 123:21
to press	11:26 13:28 29:-9 85:13
press today	43:-8 123:39
have _ press	11:14 26:19 43:10 74:-9 99:11
i press	11:23 16:35
press in	11:14 25:30
do _ press	11:25 16:20 85:15
press _ tonight	11:12
we to	10:12
press on	11:10 16:-8 26:38 29:-8 43:11 53:-9 88:-8 98:10 104:19 105:23 123:-8
have _ to	10:12 19:8 80:9 123:20
we _ press	16:9 104:15
to _ on	4:19 13:-12 43:27 44:-11 51:-10 54:20 74:16 100:10 113:13 123:17
press for	11:19 16:-9 104:46 114:15 123:17
press _ tomorrow	105:30
press $	9:-10 11:15 14:-8 24:10 25:41 26:48 28:-10 29:-9 33:-16 34:42 42:-12 43:42 64:-8 85:20 98:51 99:56 101:-12 102:64 105:16 112:-8 123:16
until next	46:9
i _ until	110:8
press _ next	25:35 26:-25 29:-10
until _ @day	46:8
press==ing	2:-9 11:33 13:-11 16:63 25:-11 27:14 29:-13 32:-13 33:-14 34:25 42:-27 43:59 44:24 54:27 85:14 96:11 98:-10 103:37 104:-12 106:34 114:11 123:-21
need press	11:15 25:8 99:-8 102:57 105:26 123:-9
what _ press	11:20 25:40 29:-9
need _ in	11:8
press _ the	16:-18 33:-10 43:35 44:26 85:13 88:-9 99:14 104:14 114:13 123:-8
press==ed	11:36 13:21 15:-20 16:15 17:-14 24:11 25:-13 29:-27 33:54 42:-9 43:294 44:-9 64:-11 74:-14 85:-20 88:-10 100:-9 101:-10 106:-8 112:-10 113:-8 123:54
be press	11:36 16:24 29:-13 43:-17
to _ to	30:10
to _ press	11:27 16:13 29:-10 98:14
)~"
R"~(for today	26:8 53:16 100:14 107:25
job _ press	11:11 13:13 16:48 43:31 123:-28
press _ today	98:11 105:8
until #o	20:10
until _ of	20:10 70:11 113:27
should be	1:17 42:-8 46:9 54:28 68:15 97:17 103:15 105:25 117:22 122:9 123:-11
this morn	3:-8 11:-8 13:-9 16:-8 25:-9 28:-8 43:13 44:15 49:12 73:11 74:-9 76:16 77:-9 94:30 95:9 96:17 100:30 104:21 106:27 107:15 110:31 114:37 116:19 123:-11
need _ on	105:14
press _ this	25:13
on _ morn	29:21 44:-9 114:24
morn $	11:32 16:-8 25:-14 26:52 28:-12 29:35 33:-10 40:10 43:14 53:9 94:27 96:8 100:33 104:13 106:33 107:12 109:-12 110:24 114:41 116:15 123:-18
latest==	11:75 16:-9 29:63
latest	11:75 16:-9 29:63
^ latest	11:40
latest press	11:44
press by	11:40 29:-9
by date	11:27
press _ date	11:27
date $	11:10 31:13 123:11
date==	9:30 11:10 12:17 29:10 30:17 46:88 117:26 123:26
the press	11:13 13:-8 14:-8 15:-9 16:-9 17:-10 25:100 26:78 28:-22 29:29 31:-9 33:-11 43:28 46:-8 52:-8 53:-15 54:8 56:-11 74:-16 82:-9 84:11 98:68 100:65 101:63 104:74 109:-8 111:-9 114:9 123:-13
date of	11:16 117:12
date _ job	11:11
date for	11:15 29:13 30:13 46:15 117:15
is _ press	25:75 26:-13 29:8 98:16 123:-9
by _ for	11:9 36:11
^ press	2:-9 11:-14 13:-16 16:49 26:11 29:21 42:-15 43:72 51:-10 54:53 84:-10 98:-14 100:109 101:48 103:16 104:40 105:15 123:10
date _ @job	11:26
the latest	9:8 11:35 29:59
is _ latest	9:8
the _ press	16:44 43:14 99:9
latest _ for	11:18
press _ job	11:17 16:12 43:10
latest day	9:8 11:8
day to	9:25 10:9
latest _ to	9:8 11:8
day _ press	11:8
day of	8:-15 9:23 11:14 46:16 111:11
press _ of	16:34 100:21
time==	0:-12 5:-13 8:-11 10:8 11:-12 13:-15 14:-9 15:-10 16:-10 17:-10 19:26 20:18 22:10 23:-11 25:-12 27:73 28:15 29:66 30:15 32:25 33:-22 34:-10 42:-15 46:18 51:-9 53:8 64:49 78:-10 94:8 98:9 100:-11 103:10 105:41 106:-8 108:39 114:-18 116:-8 119:14 120:31 123:14
time	0:-13 5:-13 8:-12 9:-9 12:-10 13:-16 14:-10 15:-10 16:-12 17:-11 19:26 20:17 22:12 23:-11 25:-13 26:39 27:88 28:23 29:56 32:34 33:-24 34:-12 42:-15 46:18 51:-13 64:49 78:-11 94:8 98:8 100:-11 103:9 104:-8 105:39 106:-9 108:36 114:-19 116:-8 119:14 120:30 123:13
press time	11:28
time $	19:26 20:23 29:44 33:-15 64:28 94:10 114:-16 120:12 123:24
anyth due	11:13
anyth _ on	13:46 24:8 26:14
due _ job	46:17
with @job	11:-9 13:30 29:18 106:8 112:44
when is	9:14 11:40 13:-11 25:47 26:-11 28:23 29:29 31:52
is _ recheck	11:30
recheck _ job	44:31 88:-20 114:32
@job due	46:30
recheck _ the	11:23 44:15 102:20 114:19
the _ due	11:-12 12:27 31:9 46:11 117:14
recheck _ @job	44:37 114:26
^ recheck	11:29 17:-9 44:127 54:39 74:-14 88:-36 114:69
#n due	12:24 46:17
recheck of	42:-10 44:63 88:-22 114:62
check the	18:8
@job again	44:15 71:20 114:40
the _ again	44:21 71:20 102:10 114:10
at @job	44:18
look _ @job	13:59 44:13 93:9 114:9
at the	2:-9 3:-8 4:14 8:10 12:44 14:-12 24:16 25:20 26:-10 33:-11 35:8 40:-8 44:13 45:30 47:18 49:13 52:12 53:9 57:47 60:13 63:11 71:-9 75:66 76:16 86:-15 90:-8 91:9 92:-8 102:37 114:-8 119:8 123:-19
should _ look	17:11
look _ the	0:20 8:18 44:23
at _ @job	13:12 44:21 107:10
at job	11:14 16:8 94:-9 114:23 123:16
#n again	11:17 16:21 23:10 77:30 123:19
look _ job	11:15 44:25 88:-8 93:-13 94:-10 114:23 123:29
at _ #n	0:-11 3:13 11:13 35:8 36:-9 41:-10 44:11 45:38 75:46 88:-8 89:-8 90:21 92:20 94:-14 96:-9 106:8 114:34 119:9 120:13 123:13
job _ again	11:18 43:10 77:19 114:9 123:20
must the	11:13
press at	43:11
must _ @job	11:13
@job _ to	0:9 11:15 13:21 27:19 36:-11 46:39 63:22 69:9 82:36 83:-10
be _ at	100:8 103:19 109:13
at _ latest	29:27
latest $	11:17
#n have	4:-10 27:15 43:8 44:22 69:-11 80:9 89:14 123:16
when _ job	11:16 29:37
should _ #n	0:-10 4:37 68:20
job _ have	4:-10 27:15 43:10 69:-11 74:9 123:19
#n _ to	0:-10 4:25 10:8 13:-9 15:25 17:12 23:-9 29:-10 33:-14 36:36 37:21 39:13 40:8 43:-9 44:-11 52:13 63:8 64:24 69:-8 70:8 71:9 74:16 77:-10 82:8 83:-10 93:9 97:49 98:11 104:-8 109:27 110:-15 113:24 123:-36
when _ @job	11:20 46:9
must _ be	18:11
@job _ press	13:13 33:-9 43:20 44:13
@job have	11:22 29:-10 73:14 89:10
press job	13:-10 15:-13 16:45 29:-8 33:53 42:-20 43:33 106:34
to _ job	6:11 18:19 44:9 106:22 123:11
press _ #n	13:-9 15:-14 16:65 33:53 42:-21 43:19 53:-10 84:9 97:14 98:14 101:-10 103:-13 104:56 106:34
job _ at	3:-13 29:8 42:18 44:21 69:-9 74:-9 75:22 76:23 83:10 88:-10 106:25 123:15
press the	43:47 105:10
@job at	3:-8 13:16 17:25 40:26 41:-10 75:9 77:9 95:11 106:16
press _ @job	16:20 43:35
the _ at	3:-10 9:-8 12:9 13:20 14:17 28:23 29:-9 38:-9 40:36 47:21 65:10 75:-10 89:-8 90:19 96:16 102:13 106:21 120:32 123:-9
press @job	16:46 43:10
to _ @job	64:8
i _ @job	26:10 46:20 114:13
press _ at	26:21 43:27
we press	16:41 123:-12
is job	4:-12 11:17 13:85 15:43 16:57 17:-14 23:-13 27:22 29:61 42:-16 43:-11 112:-25 123:-40
job _ want	11:14 29:-10 46:15 90:18
want $	4:9 9:29 11:12 29:-11 32:-9 97:20 98:17
#n promis	11:11
promis $	11:34 30:43 46:-8 117:11
is _ @job	13:102 15:31 17:33 23:-10 25:-14 27:8 29:14 36:9 42:-10 47:-10 72:10 91:11 112:-8 113:19 123:-10
day is	11:26 13:-8
@job promis	11:30 29:-11
the _ promis	11:11 29:-8 30:12
@job _ for	11:36 113:16
which day	11:18 28:18 30:9
deadlin==e	11:44 46:64 112:-9
deadlin	11:44 46:64 112:-9
the deadlin	11:8 46:19
deadlin of	11:24
^ deadlin	11:16
deadlin _ job	11:12 46:20
due _ of	46:14
deadline==s	10:20 11:105 121:37
deadline	10:20 11:105 121:37
the deadline	11:17 29:9
deadline on	11:26
are _ deadline	11:11
^ deadline	11:70
deadline for	11:19
for _ #o	0:43 3:25 4:-13 35:25 76:9
person==	20:14 28:20 29:33 48:-8 57:124 60:32 61:35 62:56 63:-20 64:11 73:-13 74:-10 97:-12 106:15 108:12 123:-9
^ job	1:-15 2:-19 3:-28 4:-21 5:-15 6:-13 11:-18 12:45 13:121 15:-42 16:-32 17:-16 18:-10 23:-22 24:-11 27:-22 29:-34 33:-35 36:-22 37:-11 39:-10 42:96 43:27 46:75 47:19 60:-10 63:58 64:22 68:-8 70:-21 71:-15 72:25 73:103 74:-9 77:-15 83:-19 86:-13 89:46 90:67 91:31 92:71 93:33 95:16 96:19 98:-9 100:-8 102:-8 103:-10 104:-15 106:20 107:-39 112:89 113:51 123:-48
person	11:-10 14:131 20:13 28:18 29:27 33:11 34:-10 48:-9 52:-8 54:-8 57:120 60:30 61:33 62:54 63:-20 64:10 73:-14 74:-10 97:-12 106:14 108:11 123:-13
@person	0:-27 1:-35 2:-12 3:-17 4:-24 5:-23 6:-20 7:-17 8:-31 9:-30 10:-19 11:-57 12:107 13:-49 14:-46 15:16 16:-30 17:-43 18:-23 19:-20 20:-22 21:-21 22:-25 23:-42 24:-24 25:-46 26:79 27:-36 28:124 29:95 30:33 31:-16 32:-23 33:101 34:-30 35:-18 36:-16 37:-30 38:-12 39:-21 41:-15 42:37 43:-20 44:-24 45:-9 46:-36 47:-25 48:-8 50:-14 51:-87 52:-43 53:-53 54:-32 55:-10 56:-18 57:-64 58:196 59:30 60:268 61:242 62:256 63:209 64:37 68:-17 69:-13 70:-11 71:-13 72:-15 73:-22 74:-41 75:-13 76:-10 77:-14 78:-10 79:-8 80:-13 81:-9 82:-11 83:-19 84:-14 85:-15 86:-27 88:-27 89:-14 90:-27 91:-16 92:-15 93:-17 94:-18 95:-14 96:-18 97:-20 98:-24 99:-22 100:-43 101:-35 102:-27 103:-28 104:76 105:30 106:71 107:-37 108:205 109:140 110:180 111:-32 112:-31 113:-31 114:-24 115:-11 116:-22 117:-32 118:-12 119:-17 120:-26 121:-18 122:-29 123:74
person @person	12:10 28:34 29:41 33:8 57:-18 62:-12 63:-16 73:-12 74:-10 106:17 108:14
@person mine	28:10 29:14 60:-11 63:-9
mine ~	28:21 29:18 60:-18 63:-10
job _ @person	12:67 29:-8 30:15
person _ mine	28:10 29:14 60:-11 63:-9
@person _ ~	12:10 28:12 29:13 57:-8 60:17
~ _ ~	14:9 16:11 32:24 48:45 49:9 54:-10 55:110 84:-37 85:11 97:-13 115:30 119:-48 120:-41 121:-32
bench==	0:-9 2:-8 5:-9 6:31 7:-8 8:-9 11:-13 12:68 13:-26 14:31 15:98 16:-8 17:-14 19:-8 23:-11 25:-8 26:-10 27:-11 28:-8 29:-20 33:-14 34:-9 38:-14 42:-11 57:87 59:-11 60:91 62:-8 63:95 64:19 73:-11 74:-8 78:13 84:-12 86:-9 97:-10 98:24 100:21 101:-9 102:128 104:11 107:-9 109:-8 110:-9 112:-9 113:-11 123:-14
bench	0:-15 2:-10 4:-9 5:-13 6:24 7:-12 8:-25 9:-22 10:-12 11:-30 12:56 13:-36 14:37 15:82 16:-13 17:-20 18:-8 19:-11 20:-11 21:-9 22:-13 23:-26 24:-11 25:111 26:47 27:-17 28:-23 30:-12 31:-13 32:-13 33:-22 34:-20 35:-9 37:-15 38:-16 39:-11 42:-20 44:-9 46:-11 47:-10 50:-8 51:-14 52:-18 53:-11 54:-15 56:-11 57:80 58:-9 59:-16 60:112 61:-15 62:-16 63:81 73:-13 74:-9 75:-8 78:9 82:-8 84:-14 86:-14 88:-11 90:-11 91:-8 93:-8 97:-28 98:181 99:58 100:104 101:79 102:119 103:-24 104:102 105:60 106:-14 107:-18 108:-11 109:-27 110:-30 111:-10 112:-14 113:-13 114:-14 116:-8 117:-11 118:-9 119:-8 120:-11 121:-13 122:-9 123:-46
)~"
R"~(bench ~	12:16 60:12 63:26 73:-8
~ person	12:8 28:10 29:8 57:-8
@person bench	12:8
job _ ~	12:17
bench _ person	12:8
~ _ @person	12:8 28:10 29:8 57:-8
person _ bench	12:8
job _ ther	12:12
what _ have	8:-9 11:-13 12:19 22:10 29:-9 30:18 31:9 32:11 33:9
job _ we	11:-9 12:31 16:-9 46:14 114:15
job do	11:-8 12:32
are open	12:11 51:19 53:8 108:20 111:9
open $	2:-9 8:-18 9:-8 12:48 13:22 108:46
me _ job	0:-15 3:33
show _ queu	12:52
^ queu	12:32
are my	28:22
my job	12:49
what _ my	28:22
show _ job	12:13 13:20
are mine	12:53 26:38 28:-8 29:-22
job _ mine	12:13
mine $	12:52 13:-23 15:59 17:-10 63:118 112:-11 123:-12
job _ i	12:26 44:24 88:-14 123:22
job of	4:21 12:32
of @person	12:13 26:12 28:13 33:12 51:-23 53:-11 60:16 104:8 108:45 109:9
@person $	11:-9 12:50 13:-8 26:-9 27:-13 29:46 42:8 58:116 60:-9 61:71 62:12 63:105 64:25 104:24 108:-13 109:-11 110:-8 112:-8
show job	13:65
show @person	12:9
@person job	12:35 63:12 73:-9 106:10
^ @person	0:-11 1:-10 4:-11 5:-9 6:-8 9:-10 11:-12 12:-14 13:-19 14:-19 15:-21 16:-15 17:-20 18:-11 21:-8 22:-8 23:-11 24:-8 25:-11 27:-9 28:-67 29:-35 30:-13 31:-11 32:-8 33:-26 35:-9 37:-9 39:-9 41:-8 42:59 43:-9 44:-10 46:-11 47:-10 51:-36 52:-16 53:-17 57:-22 58:67 59:-27 60:137 61:160 62:118 63:72 64:-9 74:-12 86:-10 88:-10 90:-11 96:-9 97:-8 98:-15 100:-14 101:-20 102:-10 103:-9 104:29 105:11 106:43 107:-14 108:161 109:170 110:119 111:-17 112:-13 113:-11 114:-9 116:-9 117:-15 119:-9 120:-14
job doe	12:-10 14:39
doe @person	12:23 25:-10 26:22 28:75 110:-8
@person have	12:25 25:-9 26:24 29:12
what _ doe	0:-10 4:20 9:14 13:-8 15:46 25:39 27:16 28:24 29:-9
doe _ have	9:-8 11:-12 14:36 15:17 25:-14 26:24 29:27 113:10 123:-8
has @person	12:11 26:45 29:24 33:12
has _ have	30:9
@person got	12:43 29:-15 58:12 60:16 97:-8
what _ has	22:11 27:13
has _ got	12:13
the ~	57:13 60:8
~ bench	12:12 57:8 60:14 63:23
job _ the	9:15 12:32 15:11 17:-11 30:-12 44:-14 46:24 47:-12 63:-8 73:79 88:17 90:32 94:21 106:-8 112:-11 113:-9 123:-12
of _ ~	48:15
the _ bench	12:43 57:52 60:50 63:51 102:-22
bench $	8:-8 9:-8 11:-14 12:11 13:-12 14:12 15:11 25:22 26:37 28:-8 33:-12 57:53 60:36 63:80 64:-12 98:40 99:47 100:-9 102:91 105:38 123:-22
of ~	32:64 120:40
of _ bench	98:12
job at	12:17
at ~	11:-9 55:68 57:-8 120:24
at _ bench	12:11 13:-8 15:22 25:14 102:15
on ~	34:29
on _ bench	1:10 15:11
are on	4:10 115:10
job _ on	33:20 93:-14 104:12 112:30 114:19 123:23
are at	24:20
how _ job	12:11 13:14 16:13 43:-10 123:17
about==	0:13 1:-12 2:9 3:-8 5:-12 6:9 8:26 9:-8 11:-8 13:51 17:62 19:-9 22:32 23:-8 25:31 27:-10 29:-12 34:9 38:-10 44:-11 50:26 52:-10 57:9 66:9 67:-8 70:-8 74:-21 78:46 83:10 84:-9 85:9 88:25 91:8 102:-8 111:-11 123:68
about	0:13 1:-12 2:9 3:-8 5:-12 6:9 8:26 9:-8 11:-8 13:51 17:62 19:-9 22:32 23:-8 25:31 27:-10 29:-12 34:9 38:-10 44:-11 50:26 52:-10 57:9 66:9 67:-8 70:-8 74:-21 78:46 83:10 84:-9 85:9 88:25 91:8 102:-8 111:-11 123:68
what about	8:44 9:-8 13:19
about job	13:13 17:14 83:13
about _ #n	13:47 17:18 37:17 83:13 85:10 123:-11
how about	13:20 25:37
about @job	13:13
about the	8:47 9:-13 13:34 17:-9 25:34 33:8 34:14 37:-9 123:9
about _ @job	123:33
far==	2:-10 4:13 5:21 9:13 13:28 14:16 16:29 21:17 27:43 32:-8 45:33 50:8 76:21 84:-18 87:-16 106:-9 123:-9
far	2:-10 4:13 5:21 9:13 13:28 14:16 16:29 21:17 27:43 32:-8 45:33 50:8 76:21 84:-18 87:-16 106:-9 123:-9
how far	2:-9 4:14 5:22 9:14 13:30 16:25 17:-14 27:43 106:-8
far are	27:16
we with	13:54 27:11
with job	29:10 106:46 107:14 112:20
far _ we	16:8 27:15
are _ with	13:54 27:11 106:-10 121:13
wher are	1:-9 4:32 13:38
with _ @job	13:26 30:15 46:11 81:12 113:9
status==	13:170 25:13 61:14
status	13:170 25:13 61:14
the status	13:18
status of	13:74
status _ @job	13:32
stat==e	2:-10 5:12 13:73 25:47
stat	2:-10 5:12 13:73 25:47
the stat	13:53
stat of	13:52 25:47
status _ job	13:14
^ status	13:56
status _ the	13:28
slot is	13:14 76:26 90:54
is open	12:17 13:28 28:-15 51:8 108:23
open on	12:15 28:23 52:33 53:11 111:26
slot are	13:19 18:12 42:11 73:13
open of	13:9 51:8 53:-8
@job is	0:-12 2:-11 4:-9 11:-20 13:-22 15:-27 16:-12 17:-23 23:-13 27:-8 29:-18 36:-10 40:29 41:10 42:48 43:38 44:49 46:8 47:32 54:-9 63:28 64:71 70:11 72:28 82:26 83:-15 86:54 88:-22 90:-8 92:19 96:23 100:-8 105:9 107:-12 112:61 113:49 123:-48
is still	17:-19 27:35 31:16 44:61 86:38 123:-19
of _ is	3:-18 13:-9 15:18 27:8 39:28 40:15 43:12 50:25 52:18 62:15 65:10 67:-8 79:10 83:-13 86:12 87:9 96:10 98:15 102:13 108:10 114:-8 119:11 120:37
@job _ still	17:-10 44:34
is _ open	111:19
fret is	3:-8 13:32 77:17 92:9
fret _ to	2:15 13:25 16:21 17:-17 41:-9 69:31 74:-15 76:8 95:15 96:8 123:-14
miss==ing	13:35 33:11 43:11 123:-10
@job are	2:13 4:-9 5:-9 42:31 69:-10 70:12 73:21 81:12 90:17 94:13
are still	5:-9 12:26 13:27
miss	13:35 33:11 43:11 123:-10
still miss	13:21 123:-9
still to	5:-13 13:12 27:27 31:18
to make	2:12 77:11 123:-10
make on	16:-9 114:16
slot _ still	13:15
is _ to	5:10 8:-8 11:-9 13:20 15:15 17:17 23:11 27:21 29:-16 31:13 36:9 50:30 51:20 52:8 61:-10 62:24 69:-10 70:10 82:9 88:-11 90:15 117:19 123:-12
#n are	4:-8 16:-9 38:-8 42:10 43:18 44:-8 69:14 73:22 74:-9 80:31 82:11 83:20 88:-13 89:13 94:23 95:15
job _ are	2:16 42:15 44:-8 69:-9 70:11 73:23 74:-19 82:12 83:21 123:8
#n _ still	44:26 86:9 123:-8
are _ open	28:84 29:-8 51:-11
fret _ still	13:11
still _ cut	5:-12 13:28
are _ to	5:-8 11:-9 12:-15 13:16 29:30 51:-21 53:9 101:13 106:19 108:24
what _ still	13:13 27:20 31:18 123:-10
left to	13:40 17:27
left _ cut	13:11
still _ to	12:27 123:20
dress==ed	1:72 3:31 13:15 35:-9 38:44 41:27 42:53 49:-16 74:-11 77:8 79:-23 91:-10 106:-10
yet==	11:-8 13:68 15:13 16:54 17:25 19:-11 31:47 33:-10 42:-10 43:-19 86:8 109:-9 123:47
is @job	13:32 15:76 16:-10 17:25 23:-16 25:-9 63:-10 123:55
all press	13:25 16:-9
yet	11:-8 13:68 15:13 16:54 17:25 19:-11 31:47 33:-10 42:-10 43:-19 86:8 109:-9 123:47
press yet	16:58 43:-16
all _ yet	13:25 16:-9
yet $	13:52 16:55 17:25 19:-11 31:48 42:-9 43:-18 109:-9 123:42
the _ dress	41:13
@job _ yet	13:13
#n cut	6:11 13:16 35:13 71:-8
#n _ press	43:11 88:-9 123:56
@job cut	6:57
the _ cut	73:18
@job done	46:11 47:8
the _ done	9:16 46:11
all cut	13:12 42:17 70:34
#n _ cut	5:26 13:14 42:23 69:22 70:13
person==s	14:138 33:10
retir==ed	14:113 15:-9 33:-9 36:12 57:-9 60:-15 61:62 62:48 77:10 101:12 117:11 120:-10
^ person	14:86
retir	14:98 15:-9 26:-8 29:-10 33:-12 36:12 57:-12 58:-10 60:-20 61:189 62:62 63:-11 77:9 85:10 101:11 108:-9 109:-10 116:-12 117:10 123:-11
retir ~	14:14
~ retir	14:10
person _ ~	57:29
retir _ retir	14:10
person $	12:-10 14:112 33:8 59:13 60:32 61:38 62:31 123:-8
who is	13:-11 14:67 15:81 25:38 26:19 28:72 29:38 32:-10 33:-12 102:-10 123:-25
who _ ther	14:74 15:-14 28:-13
work==s	14:38 25:-8 29:-9 33:-18 51:-12 52:-9 57:44 60:33 61:-16 62:29 63:-9 101:45 108:81 109:-11 110:48
who work	14:34 15:-11 28:40 29:-8 33:12
work here	14:53 28:-17 57:40 61:31 62:50 108:-24 110:-9
who _ here	14:53
here $	14:51 15:-10 28:9 33:-8 34:41 63:24 107:17 116:65 117:-17 123:-8
who all	14:40
all is	14:17 44:14
who _ is	14:22
all _ in	14:11 25:21 83:29
in _ shop	8:20 14:38 28:-13 59:9
shop $	8:19 14:35 28:-15 37:8 47:25 52:-8 53:10 61:29 62:28
is here	14:11 49:8 52:9 108:37 109:-10 110:15 116:60 117:-12 118:-10
all _ here	14:13
who _ in	14:25 15:-8 28:35
peopl==e	14:165 28:22 57:13 61:19 117:8
peopl	14:165 28:22 57:13 61:19 117:8
the peopl	14:45 28:23 29:-8 117:9
peopl $	14:105 61:22
show peopl	14:25
who has	14:32 15:12 23:71 25:20 26:36 33:-64 62:10 64:15
has retir	14:31 61:27 62:-8 117:12
who _ retir	14:45 15:-8
retir $	14:58 61:71
whos==e	12:38 13:-19 15:176 23:24 49:11 66:-9 123:-9
whos	12:38 13:-19 15:176 23:24 49:11 66:-9 123:-9
^ whos	12:40 13:-17 15:148 123:-8
whos $	15:70 23:26
whos job	13:-10 15:49
whos _ #n	15:18
whos _ is	13:-8 15:31
whos is	15:34
whos _ job	15:16
whos _ the	15:14
is on	8:30 9:10 11:-15 12:8 13:-8 14:17 17:-8 23:-8 26:-16 29:69 31:30 44:-22 91:11 107:24 109:30 112:9 114:25 123:-12
who _ on	14:13 15:43 25:11 26:-12 29:44
who doe	15:33 29:46 30:10 33:-21
who _ the	14:-19 15:58 26:11 28:-9 32:32 33:16 42:-9 123:71
)~"
R"~(build==s	15:13 63:36
build	15:23 63:36
build the	15:14
build _ @job	15:14
who _ job	15:44 16:-8 29:-11 33:84 123:-18
has the	8:-10 12:14 15:59 21:29 26:15 29:-8 31:25 39:15 64:11 104:18 112:42 123:-11
has _ @job	15:34
has job	15:33 17:15 29:8 33:-8
has _ #n	10:10 15:19 17:9 23:46 33:17 46:-18 58:10 64:41 73:10 76:-21 123:-9
with $	14:-8 15:35 57:16 80:13
who _ @job	15:12
is _ with	13:-10 15:12 18:19 43:-10 84:9 102:40 113:21
what bench	15:47
bench doe	15:58
bench _ the	12:8 15:18
which bench	13:-12 14:45 15:63
bench has	15:16 98:18
bench _ job	13:-12 15:78 63:12 73:-8 104:8
bar==	0:-8 9:-13 11:-8 16:117 17:-14 27:-8 29:-10 37:-9 41:-14 43:48 45:-22 48:-13 54:-12 56:-11 63:-8 84:181 85:237 86:19 91:-12 94:-8 97:11 99:-22 100:-8 119:-9 121:-11 123:43
load==	0:-13 2:-9 4:-9 5:-14 9:-8 16:128 17:-10 24:130 29:17 43:27 70:-9
press slot	16:10 105:43
bar	3:-12 4:11 9:-14 11:-10 16:115 17:-15 27:-16 29:-10 37:-9 41:-14 43:48 45:-22 48:-13 54:-13 56:-11 59:-8 63:-8 84:179 85:258 86:19 91:-12 94:-8 97:11 99:-25 100:-8 119:-9 121:-13 123:32
#n bar	16:15
bar ~	16:48 48:-8 84:27 85:60 91:-8
~ bar	16:13
load	0:-17 2:-13 4:-10 5:-14 8:-8 9:-8 16:134 17:-11 18:-12 19:-8 24:142 29:20 33:22 43:27 54:13 70:-9 71:-8 72:9 74:9
load #c	43:34 70:-8
pound	16:14 43:33 45:-12 54:24 84:35
#c pound	16:14 43:33 45:-12 54:10 84:35
@job load	43:12
press _ #r	104:42 105:8
job _ bar	16:10
bar _ job	16:15 43:17
bar _ load	16:16
~ _ #c	16:14 43:-9 48:-12 55:-10 84:12 119:8 120:45
load _ pound	43:13
job _ load	43:18
@job _ #c	43:34 71:11
press all	25:13
#n load	43:20
lb	5:-11 16:50 43:63 45:-13 54:86 84:37 104:-8 119:-8 123:13
#c lb	5:-11 16:50 43:63 45:-13 54:69 84:37 104:-8 123:14
lb job	43:9
press _ ~	54:20
the _ load	29:22
load _ slot	74:12
slot _ load	43:11
load _ lb	43:12
#c _ job	16:-12 43:29 71:10
the _ bar	2:8 4:16 9:-9 16:40 27:-13 41:-9 43:49 84:42 85:55 99:-11 123:21
#o _ ~	109:8
lb _ the	43:12
lb _ job	16:8 43:9
#r _ slot	44:-8 74:26
off==	2:-9 3:-12 4:-13 5:37 8:-9 9:-12 10:-12 11:-21 12:-9 13:-27 14:-17 15:-20 16:20 17:40 18:-13 19:-14 20:-12 22:-10 23:-18 25:-13 26:-21 27:-19 28:44 29:-34 30:-12 31:-10 33:-22 34:-11 35:-15 36:-8 39:17 40:-8 42:-22 43:-10 44:-16 47:90 49:-8 50:-8 51:-8 52:23 53:-8 54:-10 56:29 58:-17 59:10 60:-11 61:-12 62:-10 63:-16 64:26 65:-15 68:39 69:13 70:69 76:23 78:-8 81:-8 82:-14 83:27 84:-8 85:11 86:47 88:-14 90:-14 91:-12 92:-10 93:-8 94:-12 97:-8 98:-10 99:51 100:22 101:-8 102:-12 104:-8 105:54 106:-25 107:100 108:-25 109:140 111:-8 112:-18 113:-14 114:8 115:9 116:-14 117:-11 118:39 119:-8 122:-14 123:10
off	2:-9 3:-12 4:-13 5:37 8:-9 9:-12 10:-12 11:-21 12:-9 13:-27 14:-17 15:-20 16:20 17:40 18:-13 19:-14 20:-12 22:-10 23:-18 25:-13 26:-21 27:-19 28:44 29:-34 30:-12 31:-10 33:-22 34:-11 35:-15 36:-8 39:17 40:-8 42:-22 43:-10 44:-16 47:90 49:-8 50:-8 51:-8 52:23 53:-8 54:-10 56:29 58:-17 59:10 60:-11 61:-12 62:-10 63:-16 64:26 65:-15 68:39 69:13 70:69 76:23 78:-8 81:-8 82:-14 83:27 84:-8 85:11 86:47 88:-14 90:-14 91:-12 92:-10 93:-8 94:-12 97:-8 98:-10 99:51 100:22 101:-8 102:-12 104:-8 105:54 106:-25 107:100 108:-25 109:140 111:-8 112:-18 113:-14 114:8 115:9 116:-14 117:-11 118:39 119:-8 122:-14 123:10
#c _ ~	48:-14 119:11
#c _ the	43:43 58:22 59:9 66:8 81:32 97:-8
@job _ fret	0:-15 3:-28 35:-10 36:16 41:26 42:33 44:13 71:-8 75:14 77:11 91:15 92:10 96:-8
#c _ #n	81:8 84:-12 110:13
crown==	3:-12 8:18 9:-9 16:28 18:-28 19:11 27:35 32:27 38:-20 43:-8 48:105 49:17 68:-10 79:-9 84:-91 87:147 88:-13 89:93 97:-21 98:-11 103:28 116:18 120:-18 123:-9
the bar	43:9 45:-9 85:94 99:-8
~ with	55:19 56:-8 57:17
with a	16:8 44:10 59:13 73:18 87:-15 94:-10 95:18 119:12
crown	1:-11 3:-22 8:11 9:-13 13:-11 16:23 18:-30 19:57 27:31 32:24 38:-21 39:9 42:41 43:-9 48:104 49:16 54:-14 57:-9 65:-8 68:-12 74:-12 76:12 79:-10 80:8 84:-92 87:142 88:-16 89:95 97:-8 98:-20 102:62 103:66 116:17 120:-20 123:-13
a crown	49:11
crown #d	16:14 48:69 49:13 84:-75 87:20
with _ bar	16:8
the _ ~	43:9 56:9 85:18 121:25
~ _ a	120:20
with _ crown	19:15 49:11 87:-14
a _ #d	1:9 48:11 87:9
crown _ mm	3:-10 16:13 48:45 84:-41
with #c	16:27 38:11 43:9 74:-9
lb $	5:-10 16:42 43:18 45:-12 54:58 84:29
wide==	3:-19 4:-8 8:23 9:-14 16:13 18:41 40:-9 43:-9 48:55 73:70 75:63 84:-15 85:-15 87:47 90:14 97:-9 123:50
with crown	16:8
wide	3:-19 4:-8 8:23 9:-14 16:13 18:41 40:-9 43:-9 48:55 73:70 75:63 84:-15 85:-15 87:47 90:14 97:-9 123:50
in wide	48:20 84:-22
with _ #d	16:8 18:16 35:16 73:-13
crown _ in	48:11 84:-13
#d _ wide	18:33 48:23 73:-10 75:21 84:-44 87:23
wide $	3:-16 16:18 48:-22 73:65 75:31 84:24 87:45 90:12
with _ ~	84:11
#c _ a	59:13
with _ pound	16:10
pound $	16:11 43:18 84:24
at #c	16:22 43:28 49:10 66:23 86:37 106:-10 123:20
#c with	58:11 59:10
at _ with	112:16
a bar	86:25 123:24
#n _ a	1:-16 35:-11 36:9 40:-9 41:15 44:8 51:30 69:-10 77:20 88:-10 103:36 112:16 120:10 123:10
a _ ~	48:10 55:18 119:13
under==	0:-14 9:14 11:8 13:-8 17:-19 31:25 40:-11 41:-9 43:40 44:-9 50:65 63:12 85:-8 86:88 88:36 89:121 90:15 91:25 95:14 120:8
under	0:-14 9:14 11:8 13:-8 17:-19 31:25 40:-11 41:-9 43:40 44:-9 50:65 63:12 85:-8 86:88 88:36 89:121 90:15 91:25 95:14 120:8
@job under	43:16
press fret	16:46 43:-12
again with	16:11
again _ #c	16:25 50:18
~ at	54:-8 55:68
press _ fret	43:14
on _ again	53:-9 111:28
again _ the	38:-8 43:25 77:8 103:11 114:19
again under	43:22
under the	1:9 11:13 40:-9 43:28 86:39 89:21 91:43 120:10
#n _ under	91:20
of _ again	37:18 62:19 114:9
#n _ crown	42:9
#d wide	48:23 73:52 75:39 84:-22 87:12
@job _ a	13:18 16:11 40:13 70:12 86:12 112:20
at _ lb	16:8 123:22
#c _ with	49:18
lb _ a	54:13
crown _ wide	48:20 84:-22
pass==	3:13 4:-8 16:95 17:-12 29:-8 43:77 54:11 123:27
^ next	16:25 17:35 26:-10 28:-8 29:34 43:13 53:8 105:13 110:15 111:13 123:-10
pass	3:12 4:-12 6:-9 8:12 13:-12 16:210 17:-14 27:-11 29:-9 34:-8 42:-14 43:71 44:30 54:11 83:-10 97:-8 98:10 114:-11 123:22
next pass	16:78 17:-11 43:61 123:-9
pass of	16:9 43:44
next _ of	43:43 106:21
pass _ @job	16:27 43:18
of _ with	1:9 6:9 35:16 43:10 49:10 87:-9
@job _ crown	42:9
pass _ job	3:-11 16:56 43:37
the _ pass	43:45
pass _ the	16:36 123:37
at _ pound	16:13
pound _ the	43:8
@job _ under	11:14 89:9
is next	5:11 11:23 27:27 29:-8 112:34
pass on	43:19
what _ next	11:24 17:-17 27:32 29:15
is _ pass	16:13
next _ on	11:32 29:-9
which is	2:10 41:-9 67:11 83:12 95:14
which _ next	17:32
pass $	16:84 43:-13
is _ next	27:23 29:-13 31:14 43:14 110:12
show _ pass	16:18
fret next	16:15
fret are	0:46 2:-10 13:-9 16:15 17:38 24:12 27:-10 92:9
are next	16:20 17:-8
next on	17:22 27:21 29:17
fret _ next	16:27 17:-14 30:28
next _ the	17:8 27:15
fret come	16:8
come next	17:-12 27:29 29:22 109:11 115:12 117:12 123:-11
which _ come	19:10 27:14
next for	16:22 17:-11 27:25 29:40
press next	16:10 26:-11 100:-9 104:39 105:14
press _ on	16:24 105:18
stop==	1:-8 13:-8 16:22 37:39 56:97 106:-16 107:80 123:-13
stop	0:-8 1:-12 13:-13 16:35 17:-12 23:-10 28:-8 29:-9 33:-9 37:36 42:-14 56:94 76:94 92:18 106:-30 107:206 112:-8 123:-18
i stop	16:37 107:9
stop press	16:24
i _ press	11:-15 26:27 34:30 104:8 123:19
stop _ on	76:10
did==	1:-44 2:-8 4:-13 8:-18 9:-22 13:-16 16:25 17:31 18:-13 19:123 20:66 21:64 23:23 24:37 25:-9 26:65 27:-15 29:-23 30:-9 31:38 33:123 34:-14 35:-22 36:-11 37:-13 39:-16 41:-11 43:13 71:8 76:-8 77:-9 82:-17 83:-8 88:-12 89:-14 90:-9 94:14 96:8 105:-12 107:-8 116:-17 122:15 123:35
did	1:-44 2:-8 4:-13 8:-18 9:-22 13:-16 16:25 17:31 18:-13 19:123 20:66 21:64 23:23 24:37 25:-9 26:65 27:-15 29:-23 30:-9 31:38 33:123 34:-14 35:-22 36:-11 37:-13 39:-16 41:-11 43:13 71:8 76:-8 77:-9 82:-17 83:-8 88:-12 89:-14 90:-9 94:14 96:8 105:-12 107:-8 116:-17 122:15 123:35
wher did	1:-32 16:23 20:61 32:-11 33:26 123:28
did i	16:22 19:-8 26:12 31:8 123:36
did _ press	16:33 123:-11
stop==ped	16:14 17:-9 62:8 76:98 106:-11 107:66
did _ stop	16:21
stop _ @job	107:16
did we	9:-9 11:12 13:-8 16:41 19:41 20:20 21:18 23:36 31:19 32:-9 82:-14 123:-22
we stop	107:16
press of	16:12 43:32
stop $	16:8 76:56 107:21
was==	0:-17 2:-13 3:-17 4:-10 5:-11 8:-10 9:-13 13:34 14:-8 15:25 16:-18 17:-36 18:-9 19:25 20:-9 21:38 22:-8 23:-8 25:21 28:-8 29:-24 30:-11 31:-8 33:42 34:-14 36:-10 37:11 38:-20 39:20 40:-15 42:10 43:-20 45:-9 46:-12 52:-9 54:-9 60:8 61:25 64:-13 70:27 71:-10 72:22 74:-11 76:19 77:37 82:-16 83:13 86:-8 90:22 91:18 92:-14 94:17 96:66 98:-8 100:-12 103:49 106:-21 109:-22 110:-8 111:24 114:-8 116:26 117:25 122:35 123:29
)~"
R"~(was	0:-17 2:-13 3:-17 4:-10 5:-11 8:-10 9:-13 13:34 14:-8 15:25 16:-18 17:-36 18:-9 19:25 20:-9 21:38 22:-8 23:-8 25:21 28:-8 29:-24 30:-11 31:-8 33:42 34:-14 36:-10 37:11 38:-20 39:20 40:-15 42:10 43:-20 45:-9 46:-12 52:-9 54:-9 60:8 61:25 64:-13 70:27 71:-10 72:22 74:-11 76:19 77:37 82:-16 83:13 86:-8 90:22 91:18 92:-14 94:17 96:66 98:-8 100:-12 103:49 106:-21 109:-22 110:-8 111:24 114:-8 116:26 117:25 122:35 123:29
far did	16:15
we get	2:8 8:-9 9:13 16:11 19:43 20:-9 22:10 32:19
how _ did	16:13 19:12 32:12
did _ get	16:11 19:34
get on	13:19
get _ the	2:9 9:15 41:-8
far _ i	16:15 17:-9 27:9 50:11
i get	2:10 6:9 7:9 32:25 41:-8 44:10 88:-10 104:13
get _ of	22:9 56:11 80:11 99:11
fret _ again	16:10 77:12
again at	16:18 77:14 101:16 114:14
and _ again	74:-8 94:9
#n _ at	1:8 4:-9 14:25 16:9 17:-12 35:15 45:34 68:-8 70:8 71:-11 77:21 104:11 107:10 114:35 123:13
press #n	16:9 43:28 100:22 101:14 123:-8
press _ again	101:17 123:17
bar $	16:50 43:17 84:21 123:-8
bar _ of	85:8
~ _ on	54:12 115:9 117:17
bar _ the	84:10
we took	0:9 49:11 81:23
bar for	16:11
bar of	85:14
up to	4:29 11:16 17:8 43:28 70:14 88:-8 92:30 104:-8
to #c	3:-11 40:12 43:89 45:10 50:12 66:15
if _ press	16:20 29:14
press _ to	43:14 99:10 103:16
up _ #c	43:28 68:14
to _ lb	43:29
#c _ of	8:-11 31:-8 38:18 49:40 65:15 66:16 115:16
press to	98:26
#c of	78:12 81:27 116:10
press _ #c	43:16 54:9 74:-9
to _ of	2:29 16:18 17:-9 41:-9 43:-13 69:35 70:17 74:-20 88:19 95:15 96:10 109:11
up with	51:21 110:-9
up at	101:10
lb for	43:12
#c _ for	43:11 66:10 72:17
lb on	16:22
#c _ on	16:28 86:8
i come	110:20
come _ #c	66:16
were==	0:-13 1:25 3:-9 8:-9 17:-25 19:30 33:54 35:-14 44:11 49:21 70:19 81:23 88:-12 90:-8 94:12 96:26 123:33
were	0:-13 1:25 3:-9 8:-9 17:-25 19:30 33:54 35:-14 44:11 49:21 70:19 81:23 88:-12 90:-8 94:12 96:26 123:33
load were	16:11
load _ #c	16:16
load is	16:9
is #c	66:8 67:10 98:17 120:22
if _ is	28:10 30:15 41:11
is _ lb	54:11
if the	0:8 3:18 9:12 16:22 18:16 29:10 30:11 73:-10 123:23
the load	16:54
if _ load	16:24
the _ was	17:-8 43:-9 70:12 72:17 96:13 101:10 117:14 123:37
pass==es	6:-8 8:14 16:115 42:-8 44:33 98:11 114:-9
the pass	16:35
pass for	3:-10 16:83 83:-9
me all	16:51 42:12
me _ the	8:18 13:35 17:-9 36:10 106:11 114:10
all _ pass	16:32
all pass	16:39
all _ of	19:10 34:9 43:50 44:23 80:14 96:-8 123:-17
list me	17:8
list all	10:-9 14:-10 16:20 19:16 23:66 34:33 83:-10
show all	16:19 19:15 34:8
show _ all	16:47
press plan	16:42
press _ for	11:11 16:26 29:27 100:26 104:-17
much load	16:11
load for	16:38 24:8
how _ load	16:11
much _ for	21:13
load _ fret	16:17 24:24
which load	24:35 33:28
load on	16:19
on fret	16:35 17:-9 24:-8 74:-10 81:11 88:32 90:10
which _ on	1:9 24:9
on _ fret	107:15
what load	16:33 24:42
for _ on	0:40 71:-9 104:17
load _ #n	16:31
too==	0:21 2:26 4:-21 5:-8 6:46 8:-8 9:-12 11:27 13:-15 18:17 22:95 23:-16 29:-12 31:18 32:-8 33:-11 35:-13 36:-8 38:-10 39:22 40:-23 41:70 42:-13 44:-8 45:-10 47:-8 51:-15 53:26 54:-9 57:37 60:13 70:-8 74:-9 80:8 81:-8 82:-8 86:19 88:-17 89:41 90:39 93:9 94:-9 96:9 105:-11 110:-9 118:35
middl==e	17:80 84:12 88:20 93:9 107:9
load stand	16:11
stand #d	40:-10 91:20
too	0:21 2:26 4:-21 5:-8 6:46 8:-8 9:-12 11:27 13:-15 18:17 22:95 23:-16 29:-12 31:18 32:-8 33:-11 35:-13 36:-8 38:-10 39:22 40:-23 41:70 42:-13 44:-8 45:-10 47:-8 51:-15 53:26 54:-9 57:37 60:13 70:-8 74:-9 80:8 81:-8 82:-8 86:19 88:-17 89:41 90:39 93:9 94:-9 96:9 105:-11 110:-9 118:35
too far	76:23
nutward	2:16 3:-11 16:21 88:64 89:-15
nutward of	3:-11 16:20
middl	17:93 44:28 48:9 74:-9 84:12 87:-11 88:29 93:9 107:8
the middl	17:47 38:9 44:12 88:26 93:10 107:10
the _ stand	16:28 91:8
#d _ too	41:9 45:-8
nutward _ the	3:-11 16:20
of _ middl	38:9
middl $	17:61 73:18 84:12 88:12 93:9
stand #n	16:25
mm too	16:13
stand _ mm	16:26 40:-9 91:11
#n _ too	2:10 16:11 39:8 41:11 90:21 96:14 123:-11
mm _ far	45:17 50:11 84:-17
nutward $	88:8
toward==	2:12 16:8 88:11
toward	2:12 16:18 88:18 89:-9
toward the	2:12 16:16
mm off	16:41 17:-8
off toward	16:11
trebl	2:-8 13:-8 16:55 17:80 34:-9 44:11 74:-13 88:63
middl of	88:10 107:11
#d _ off	16:11 68:18
mm _ toward	16:11
middl _ job	88:9
bass	16:24 17:19 44:15 60:8 74:-12 88:29
middl _ the	107:11
off to	16:13 52:11 99:9
mm _ to	16:13 38:13 67:12 91:18
bass $	17:9
bodyward	16:19 88:36 89:-11
too _ to	22:19 80:13
bodyward $	88:9
@job stand	13:11 17:14 91:10
of _ stand	11:19 29:-17 100:10
#d _ to	36:14 45:32 73:-10 84:-9 86:13
trebl $	16:12 88:15
the bass	16:15 17:9 60:8 88:8
far _ the	4:10 9:16 13:-10
#n is	0:-13 1:-25 2:-12 3:-24 4:-16 5:-8 11:-27 13:-55 15:-24 17:-53 18:-14 23:-26 25:-8 27:-9 29:-18 36:31 37:13 39:62 40:14 41:24 42:28 43:-21 44:23 45:-8 46:22 47:33 50:-9 54:-11 59:32 63:60 64:41 68:69 69:-17 71:-13 72:12 74:37 75:45 80:-8 82:-8 83:-14 86:26 88:-22 90:-11 91:36 92:22 93:20 96:-9 98:-10 101:22 102:-9 105:28 106:19 107:25 109:-9 112:30 116:10 117:10 118:26 120:-8 123:24
#d to	45:8 68:11 84:-9
side on	16:15 17:-8
to _ side	23:20 36:25 82:15
side of	17:39 88:24
side _ the	88:32
over==	2:-9 5:9 8:-14 16:33 19:-10 20:39 21:31 25:8 28:10 29:-9 33:-10 42:9 43:-11 60:15 63:20 64:-10 77:36 81:-10 86:22 87:43 88:47 94:-8 102:-9 123:-9
to the	0:12 1:-8 2:-9 4:-10 5:-10 9:-9 14:13 16:19 17:-8 20:18 22:-8 23:17 28:11 29:-9 33:17 37:30 39:22 42:15 54:-13 56:44 60:27 62:26 63:-18 64:23 68:-11 74:11 77:9 81:-11 82:-20 83:12 96:-8 97:39 107:-8 109:16 110:23 119:15 123:-8
over	2:-9 5:9 8:-14 16:33 19:-10 20:39 21:31 25:8 28:10 29:-9 33:-10 42:9 43:-11 60:15 63:20 64:-10 77:36 81:-10 86:22 87:43 88:47 94:-8 102:-9 123:-9
the _ side	16:18 17:56 43:-9 44:29 88:18
the _ over	21:8
over _ the	16:11 20:17 60:18 63:-13
in to	45:14
on #n	0:-11 3:27 16:-15 17:-10 24:32 28:14 29:-17 30:21 41:18 52:13 74:-19 94:-9 96:34 104:20 110:44 114:17 123:26
#n _ off	16:25 17:27 69:22 70:21 105:58 109:8 123:-8
off _ the	13:-8 16:20 86:38 99:9 109:12
bass _ fret	16:8
the trebl	16:37 17:63 44:12 88:27
trebl side	16:8 17:53 44:12 88:18
trebl _ of	17:20
off the	16:-10 17:-11 37:16 41:13 47:39 56:9 68:16 70:60 76:19 85:13 99:35 107:-8 121:15 123:-10
on _ slot	42:-8 107:13
favour==	16:42 17:-13 83:30
favour	16:42 17:-13 83:30
i favour	16:32 17:-12
favour the	16:28 17:-12
can _ favour	16:22
bass side	16:12 88:14
do _ favour	16:15
favor==	16:24
favor	16:24
we favor	16:20
favor the	16:11
can _ favor	16:15
favor _ bass	16:8
side $	16:13 17:47 44:35 82:22 88:22
we favour	16:10
favour bass	16:8
favour _ trebl	16:12
favor trebl	16:13
do _ favor	16:9
we _ trebl	16:13
at fret	3:21 89:-8 90:44 91:14 92:19 96:-8 114:15 123:-11
of fret	24:12 33:9 43:11 71:-8 77:9 90:16 94:28
at slot	0:-9 3:-29 35:10 36:-9 40:24 45:32 75:44 123:12
at _ fret	44:20 90:12
of slot	0:-10 4:10 33:32 71:16 74:19 76:10 89:9
of _ #r	33:8 94:19
of _ slot	4:8 74:12
level==	8:-13 9:28 13:-37 15:-9 16:-11 17:190 23:-8 33:-8 44:72 50:73 60:9 86:-8 88:-12 94:-8 96:90 112:-9
line==	11:8 17:62 29:-8 41:-12 43:-11 44:14 70:-9 74:-31 78:10 88:54 91:37 121:14
level	1:-10 4:-11 8:-13 9:28 13:-42 15:-10 16:-12 17:206 23:-8 25:-8 27:-8 29:-8 33:-11 35:-9 42:9 44:68 47:-8 50:72 60:8 64:-9 76:-9 86:-10 88:-14 90:-12 94:-11 96:178 102:28 106:-8 112:-14 113:-8
^ level	17:13 96:48 102:26
line	4:8 11:8 17:62 29:-8 41:-12 43:-11 44:14 70:-9 74:-31 78:10 88:54 91:37 121:14
@job line	17:14 44:9 74:-12 88:21
line bass	17:8 74:-12
line trebl	17:10 74:-9
trebl line	17:9
line middl	44:13 74:-8
middl job	44:10
#o line	4:10
middl line	17:35
level _ job	17:13
job _ line	17:10 74:-10
line _ line	17:8
line _ job	17:31 44:8 74:-12
the _ line	17:16 44:8 74:-11 88:25
#n line	17:9 44:11 74:-16
call	1:-13 2:-8 9:-8 11:10 13:-14 14:18 16:-11 17:55 18:-8 25:-10 26:-8 29:-13 30:-9 32:-17 34:-10 37:-9 39:-9 47:86 48:45 50:11 52:-8 54:-21 56:17 57:10 58:11 60:62 61:-14 62:-15 63:-9 64:-8 68:8 72:14 74:-10 77:-8 84:36 85:9 86:-10 97:40 98:88 100:-17 102:-19 107:27 108:-9 109:16 110:-10 112:-8 118:37 119:23 123:14
level _ @job	13:-15 17:57
#n _ middl	44:8
call _ @job	17:10 47:22
trebl _ job	88:12
the _ all	104:11
level _ #n	96:39
#n _ trebl	88:9
it level	17:34
)~"
R"~(level now	17:23
is _ level	44:55
it _ now	17:12 41:17 107:19
level yet	17:37
yet on	86:11
on bass	88:9
on _ bass	17:11
#n level	17:41
job _ level	17:38
#n _ yet	13:-25 16:67 123:-15
on _ side	3:18 17:10 44:9
@job level	13:-9 17:35
now on	17:12 29:-8 51:14 54:54 56:18 57:36 60:15 98:22 100:-11 102:16 119:14
@job _ now	76:9 106:22
now _ the	4:-11 35:13 43:10 51:10 63:22 69:-13 70:12 74:15 81:-11
on _ trebl	44:13 88:35
#n _ again	16:12 37:18 38:-8 43:18 64:-12 101:34 106:37
#n _ now	34:13 35:12 46:-19 54:15 60:-8 63:20 64:40 73:10 97:9 98:23 102:-9 103:26 106:-10 107:8 110:24 117:-8 119:-9 120:30
how level	13:-13 17:50
level is	13:-13 17:49
@job on	6:8 44:-12 46:30 104:14 112:19 114:23
level _ it	17:10
middl side	44:11
call==	1:-9 13:-11 16:-8 17:55 38:11 47:78 50:13 54:-8 68:12 73:8 84:21 97:12 98:63 102:-11 107:27 118:11 123:-8
i call	17:41 118:23
call it	17:41 68:13 84:20 107:48
i _ it	1:-15 3:-15 16:13 17:23 39:28 49:10 66:-12 76:32 77:19 91:8 101:10 107:8 123:-9
call _ level	17:28
can _ call	17:29
level $	9:27 13:-17 17:42 42:8 44:46 50:18 96:56 123:-14
call the	17:11 97:13 98:14 99:9
the _ level	9:22 13:-8 17:27 123:26
level on	17:16 96:11
#n _ on	0:13 4:19 13:-11 16:-15 17:26 27:-16 33:-8 40:15 42:-11 43:10 67:17 69:10 74:-9 81:-12 88:33 89:24 94:14 96:-8 106:-11 107:25 114:23 123:-19
level _ the	9:-11 50:23 96:14
call==ed	14:20 29:-9 32:-14 36:9 47:9 48:46 54:-12 56:21 57:14 60:67 61:-13 62:-13 72:16 74:-9 84:15 85:9 97:29 98:26 100:-11 102:-8 109:20 110:-9 118:27 119:28 120:9 123:27
be call	17:10 60:22 98:15
call level	17:10
@job _ call	47:13
be _ level	17:10
can the	9:-9 32:31
can _ @job	27:8
can _ be	2:10 79:-10 100:19
call _ now	60:20 98:23
can it	3:25 76:-9
it be	0:14 1:8 18:11
it _ call	119:11
can job	17:12
can _ #n	17:12
level enough	17:8
@job _ enough	3:29 17:10
it _ enough	17:9
reading==s	13:-10 16:-8 17:165 33:-11
say==	7:15 8:8 17:20 33:-9 34:40 41:-9 49:-8 50:14 68:22 78:9 103:-8 115:20 123:30
what did	5:-9 8:-9 19:52 20:13 21:34 26:31 29:-13 31:22 33:25 34:-9
did the	16:-22 17:9 19:50 20:22 21:26 31:13 33:-14 43:21 44:15 116:-14
reading	13:-10 16:-8 17:165 33:-11
the reading	17:68 33:-8
reading of	17:27
say	0:-10 1:-17 7:13 9:-9 17:18 34:38 41:-12 44:10 46:10 48:-8 50:13 54:30 58:19 68:53 78:8 87:9 91:19 103:-9 115:18 123:43
@job say	44:9 46:12
say the	17:13
did _ reading	17:11
reading _ the	17:13
the _ say	48:-10 54:15 87:10
tell==	1:9 5:-8 8:12 9:8 13:19 14:12 16:-9 17:20 23:9 30:30 34:39 50:17 55:37 56:20 118:8 123:31
tell	1:8 4:-8 5:-12 8:11 13:17 14:11 16:-10 17:19 23:8 30:29 32:-8 33:-8 34:35 50:16 54:-9 55:35 56:82 107:-11 112:16 118:8 123:30
on trebl	17:10 88:17
the _ tell	17:23
@job _ on	1:10 11:9 13:19 29:-10 44:-11 90:10 112:10 114:34
say _ the	50:8
do _ reading	17:20
reading _ of	17:8
tell _ the	9:17 123:-8
of _ #o	52:19 89:11
about #n	17:25 22:-16 66:11 78:36 123:8
show #n	66:11
reading _ job	17:30
mean==	11:31 15:8 27:8 28:9 29:-12 49:12 52:10 103:10 122:11
mean	1:8 11:31 15:8 27:8 28:9 29:-12 49:11 52:10 103:10 122:11
mean _ the	16:12 52:11
the _ show	66:14
reading _ for	17:11
show for	20:17
is off	17:24 28:18 100:28 105:33 109:20 118:11 123:-16
what _ off	17:22
off $	0:8 1:19 14:-8 15:-8 17:39 28:13 52:35 56:14 76:-9 99:13 100:24 105:51 107:-21 109:105 111:-8 118:16 121:-8 123:-29
uneven==	17:24
uneven	17:24
is uneven	17:24
what _ uneven	17:17
high==	1:-8 2:-8 3:-12 8:27 13:-12 16:-8 17:110 19:15 44:18 48:20 74:-9 75:-8 84:-29 87:46 88:83 96:13 123:13
high	1:-8 2:-8 3:-12 8:27 13:-16 16:-9 17:145 19:15 44:18 48:20 74:-9 75:-8 84:-29 87:46 88:82 94:-8 96:13 123:13
is high	17:17 44:14 88:-14 123:23
high on	13:-8 17:31 88:43
what _ high	17:19
high _ the	17:-19 19:11 44:10 87:11 88:47
high $	3:-10 8:35 17:63 48:-12 87:32 123:20
off on	13:-9 28:30 29:-12 39:23 68:-13 86:40 107:31 108:-9 123:43
on _ on	28:20
high _ job	17:24
off _ job	107:43
high _ @job	17:18
of _ on	8:8 13:23 20:8 65:32 66:12 74:9 95:9 96:11 100:17
off of	17:14
is low	50:30 91:-8
low _ job	13:-8 17:33 91:13
are high	17:36
fret _ high	17:43
are low	17:12
fret _ low	17:37 91:-8
stand low	91:45
stand _ on	17:30 90:9
stand==	13:37 14:25 17:41 40:-10
i do	1:13 2:8 17:50 32:-8 33:30 60:11 83:12 105:36 109:30 121:22 123:-78
do about	17:55
about slot	88:8
i _ about	4:9 6:12 17:39 33:-8
what can	0:17 3:-10 5:-13 17:10 22:15 29:-9 34:104
do with	1:10 3:-9 17:41 34:-8 123:26
with fret	17:12
can _ do	1:10 3:-11 5:10 17:14 34:27 64:18
do _ fret	17:15 24:17
with _ #r	17:13
must _ do	17:8
about fret	17:13
we _ about	17:9
should _ do	17:39 29:8
about _ of	17:10
about it	17:14
do _ it	1:10 3:-9 17:32
with it	3:-9 17:17 28:10 39:13 41:11 85:8
that fret	3:12 76:21
do _ that	17:8
about that	85:10
why==	0:-9 13:19 16:-8 17:26 23:12 24:-24 25:26 29:73 39:10 47:12 70:-8 76:13 90:16 91:-9 112:-12 123:27
why	0:-9 13:19 16:-8 17:26 23:12 24:-24 25:26 29:73 39:10 47:12 70:-8 76:13 90:16 91:-9 112:-12 123:27
^ why	13:21 17:39 24:-24 25:26 29:50 91:-9 112:-12 123:30
why is	13:22 17:15 29:36 112:-11 123:-13
#n high	17:18 88:43
why _ fret	24:-24 123:50
why _ #n	17:21
is _ high	17:28 88:31
why _ the	25:29
is _ #o	30:16
#o _ on	0:8 43:9 70:12 81:-10 91:11 96:12 98:11
the _ off	16:8 17:13 32:13 37:18 49:8 56:10 70:10 72:15 86:19 96:8
#o _ of	0:28 3:58 4:-15 35:24 36:10 41:11 76:10 88:-9 95:9
#n low	17:17 88:35
low _ @job	17:9 91:9
why fret	17:20
#r low	17:9
why _ #r	17:8
#r _ on	88:8
why _ slot	76:17
#r high	17:8
#n off	64:25
span==	16:-13 17:90 29:-8
come==s	2:-8 10:-8 11:-12 13:15 17:-12 22:9 23:-10 27:22 29:27 31:8 33:-14 40:10 47:-8 48:9 49:-11 55:9 58:27 61:15 62:-14 65:15 66:14 72:17 74:-9 92:16 108:24 109:-16 110:16 112:12 113:23 115:10 116:9 117:45
span	16:-13 17:90 29:-8
span _ next	17:13
read==ing	17:66 88:20 123:9
read	8:15 13:-9 17:115 27:-9 29:-10 33:8 54:31 56:10 88:20
which read	17:21
which span	16:-8 17:41
next read	17:47
read of	123:10
read _ the	17:10
next span	17:42
span $	17:34
read for	17:32
next _ for	17:30 100:12
read _ job	17:32
read $	17:44 88:9
the _ read	49:11 54:17 66:-9
read==	8:16 17:49 33:9 56:11
we read	17:13
straightedg==e	13:-8 17:50 29:-8 88:37
we lay	2:10 41:-8
straightedg	13:-8 17:50 29:-8 88:37
the straightedg	13:-8 17:36 88:31
do _ lay	2:9 17:15 41:-8
the _ next	17:26 29:9 52:22 91:10 100:-9 104:38 105:13 112:8 123:-9
straightedg _ on	44:9
rocker==	88:43 97:11 99:11
rocker	88:43 97:11 99:11
the rocker	99:11
^ reading	17:32
me _ reading	17:14
reading $	17:36
all _ reading	17:15
all reading	17:23
count==	0:8 9:-15 17:19 20:-11 40:-22 48:-13 49:13 65:72 67:-11 71:59 75:-32 76:10 78:14 80:49 81:23 84:-54 91:-22 97:35 98:11 113:-22 115:31 116:11 119:-9
which reading	17:27
count	9:-22 17:19 20:-12 24:8 40:-22 48:-13 49:-10 65:152 66:-10 67:-13 71:59 75:-32 76:9 78:11 80:46 81:21 84:-55 91:-22 97:35 98:10 113:-22 115:24 116:9 119:-10
reading count	17:9
count of	17:12 65:17
which _ count	17:9
count _ job	17:8 40:-12 71:52 75:-16 91:-9 113:-13
reading still	17:18
still count	17:18
which _ still	13:27 17:17
reading _ count	17:18
count _ @job	17:9
count for	17:8
count $	0:10 49:-9 65:57 71:-9
still _ for	31:31
to read	17:34
left _ read	17:34
read on	17:9
level==ing	17:23
stand $	13:55 16:-10 17:14 88:16
#n stand	14:26 17:24 90:15
job _ stand	17:34
levell==ing	13:-11 17:63 27:26 74:-10 102:21 107:36 123:12
levell	2:-10 4:-9 13:-22 16:-12 17:53 24:-8 27:24 33:39 42:-10 43:-13 44:-9 47:-8 74:-12 88:-16 90:-9 94:-10 96:234 102:21 107:31
levell of	17:9 106:9
levell _ the	17:8 96:11 102:22
wher the	101:10
the levell	17:46 102:10 106:8
levell on	17:-14 33:48
levell _ job	17:-14 33:48
the level	17:14
level of	9:25 50:17
depth==	18:17 24:-8 48:21 73:31 75:-16 120:-13
width==	0:-8 3:-42 13:40 24:-8 38:-11 40:-21 41:-14 45:19 48:18 55:-22 73:26 74:-10 75:141 77:-10 84:74 86:-13 87:38 97:-11 119:-16 120:-10
bottom==	73:60 90:17
^ suit	18:70
suit job	18:35
depth	18:17 24:-8 48:21 73:31 75:-16 120:-13
slot depth	18:19 24:-8 73:16 75:-16
depth #d	73:25 75:-16
width	0:-8 3:-42 13:40 24:-8 38:-11 40:-21 41:-14 45:19 48:18 55:-22 73:26 74:-10 75:141 77:-10 84:74 86:-13 87:38 97:-11 119:-16 120:-10
)~"
R"~(slot width	18:25 73:31 75:-29
width #d	3:-22 48:13 55:-16 73:21 75:11 84:47 87:15 119:-11 120:-9
bottom	2:-11 17:-9 18:34 73:66 90:139
curv	18:14 73:34
bottom curv	73:13
#n _ width	18:9
curv _ the	18:10 73:9
@wire _ width	48:-12 87:17
width _ in	18:10 84:16 87:10
suit _ @wire	9:-10 18:18 20:59
@wire _ depth	18:10 24:-8
depth _ mm	120:-13
in _ job	3:-20 75:18 77:34 96:9 114:10
the _ bottom	90:22
width _ mm	3:-14 48:14 55:-9 73:13 75:9 84:28
@job _ width	73:16 75:-13
suit==	0:-12 1:14 18:75 73:-12
@wire suit	0:-16 1:19 18:33
the _ suit	0:-9 18:28 34:13
^ would	0:-15 1:29 3:18 18:17 40:-8 105:9
would @wire	9:14 18:20
with _ of	2:10 18:10 71:15
would _ @wire	0:-8 18:12
slot #d	18:27 73:12
slot _ mm	18:14 73:12
doe _ suit	18:33
wire suit	18:17
will wire	119:11
would _ wire	10:17 18:18
@wire right	18:36 23:-10
the _ right	18:28
is _ right	18:13 35:12 47:12
for _ with	19:22
bend==	2:-8 3:-17 18:88 40:54 42:17 70:-10 77:-8 106:11
bend	2:-10 3:-18 4:-8 5:-15 6:-8 9:-11 11:-8 13:-13 16:-8 17:-12 18:104 23:-14 27:10 33:-10 36:-9 40:53 42:43 63:-8 70:-11 77:-9 90:-8 91:-8 97:13 99:35 102:26 103:41 106:66 107:38 113:-9 123:-14
we bend	18:32
bend it	18:32
to for	15:8 18:48 29:-8
do _ bend	18:26
we _ it	0:37 5:17 6:-9 18:22 24:10 123:-9
bend _ to	18:40 102:13
@wire to	18:10 36:14 38:13 45:-8 68:32 123:13
should _ bend	18:10
bend the	9:-9 18:17 27:18 106:35
wire to	18:15
must _ bend	18:12
bend _ wire	9:-8 18:9 27:15 42:30 106:18
the _ to	4:20 16:-8 29:-8 30:14 45:-11 54:35 63:10 68:20 74:15 98:25 109:23 114:13 123:-15
wire _ for	18:39 20:8 36:-8
i bend	18:16
i _ @wire	8:46 9:27 18:35 31:-12 32:18
radius==	3:-20 18:74 23:-8 38:14 40:51 41:8 45:92 50:-8 70:-10 73:-28 77:-10 84:20 119:-14 123:33
radius	3:-20 18:74 23:-8 38:14 40:51 41:8 45:92 50:-8 70:-10 73:-28 77:-10 84:20 119:-14 123:33
which radius	18:12
which _ must	50:18
radius _ we	18:10
bend==ing	5:-8 9:-9 18:16 23:-8 27:9 33:-8 42:17 97:14 99:35 102:29 103:36 106:48 107:43 123:-11
what bend	18:43
bend radius	3:-17 18:58 40:46 70:-9 79:8
radius for	18:38
what _ radius	18:43
bend _ for	18:38
radius _ the	18:9
radius _ job	18:21
radius of	18:10 41:14
bend _ of	18:10 40:8
radius _ @wire	18:10
which bend	18:16
which _ radius	18:16
lot==s	2:10 8:-17 9:-9 19:178 123:-13
lot	1:9 3:-12 4:-8 6:-8 8:-26 9:-12 11:-9 13:-16 16:-10 17:-10 19:189 20:-10 27:-9 29:-10 32:-8 36:-15 38:11 42:-16 43:23 46:-9 47:-8 64:-8 70:15 72:209 76:-8 82:30 83:60 95:-8 96:-8 112:-13 113:-13
^ lot	19:59 72:45
lot _ @wire	8:-13 19:61
pay==	19:30
pay	19:30
we pay	19:30
pay for	19:30
did _ pay	19:30
pay _ the	19:29
the last	4:15 17:-10 19:16 33:31 44:35 88:-16 91:9 92:77 122:61 123:-11
last @wire	19:18
for _ last	4:22
last _ @wire	9:-8 19:21
for last	20:19
much did	19:15
did @wire	19:9 20:19
did _ cost	19:22
did _ the	20:8 74:8
did _ @wire	19:66 20:15 31:-22 33:-9
last _ cost	19:16
much doe	9:-14 19:31 27:-14 123:49
pric==e	8:-15 9:-10 19:86 23:-8 49:17 115:-15 116:16 118:12
pric	8:-15 9:-10 19:86 23:-8 49:17 115:-15 116:16 118:12
the pric	8:-15 9:-10 19:55 118:13
pric of	8:-15 9:-10 19:55 116:10
is _ pric	8:-15 9:-10 19:55
pric _ @wire	8:-10 19:32
pric _ the	19:23
what lot	8:-8 19:15
lot of	2:10 8:-17 19:67 43:10 123:-11
lot _ the	19:35 72:-9 82:13 83:21
which lot	19:51
the lot	5:14 7:8 19:11 23:20 43:29 72:-8 80:9 82:29 83:50
show _ lot	19:23
delivery==es	8:-10 9:-12 11:-8 19:182 23:-9 30:8 31:25
delivery	8:-14 9:-17 10:-12 13:-13 16:-8 19:218 23:-11 28:-12 29:-23 30:24 31:73 33:-12 34:-11 42:-8 49:16 65:-15 72:124 113:-8 116:50 117:9 119:8 123:-11
what delivery	19:34
delivery of	19:45 49:12 116:9
which delivery	11:10 19:22 31:30
delivery _ @wire	19:24
delivery $	9:-11 19:96 29:-12 31:22
@wire were	19:10
were ther	19:17
of _ were	19:9
the _ were	16:9 123:29
balanc==e	9:-10 20:208 21:-12 66:19
year==	9:-8 19:-12 20:60 21:73 22:11 33:-9 52:11 64:10 77:-9 78:-11 105:-10 111:17 118:36 120:18 123:24
balanc	9:-10 20:208 21:-12 66:19
^ balanc	20:82
balanc from	20:29
from @day	11:26 28:34 29:18 51:-23 100:9 108:-21 109:15
@day until	20:10 53:14
@day wire	21:9
@wire month	20:12 21:9 68:-10
all_tim	20:22
february	21:13
year	9:-8 19:-12 20:60 21:73 22:11 33:-9 52:11 64:10 77:-9 78:-11 105:-10 111:17 118:36 120:18 123:24
year #n	21:12
from tomorrow	29:8 109:15
last_year	21:13
july	21:19
january	46:16 52:15 109:20
@wire year	21:15
#c wire	80:11
june	20:10 21:11
from _ until	108:9
@day _ next	52:20
wire _ month	20:11
month _ wire	21:15 68:-10
month _ month	20:-15 21:18
the _ year	20:24 21:13
#c _ @wire	45:9 78:17 80:14 81:-10
the _ month	11:9 21:9
@wire _ january	20:9
august	18:-8 20:84
from today	20:17 28:16 60:19 63:-10 98:11 119:10
october	20:94 33:8
september	20:49 21:36
november	8:-11 11:15 20:85 21:47 33:14 44:-11 114:21
from #o	20:8
wire _ from	119:11
@wire _ today	49:12 117:17
from _ wire	5:-14 69:-9 77:38
@wire _ october	20:13
october _ the	20:10
of _ month	33:16
@wire _ april	20:9
@wire _ august	20:8
from next	29:8
this_year	21:18
month this_year	21:8
month december	21:8
from _ @day	20:10 29:8 100:9
month may	21:10
last_month	20:16 21:15
balanc _ @wire	20:58
@wire _ #c	20:-8 21:8 49:26 50:-8 65:-14 66:35 67:32
last_month $	20:19
balanc of	20:52
december #c	20:9
in _ #c	20:14 66:11 67:13 119:25 120:-22
balanc _ the	20:33
@wire over	21:8
of _ over	77:8
january $	20:9 46:16 52:15 109:20 110:-9
all_tim $	20:22
the balanc	20:56 66:13
the _ august	20:25
august $	20:31
balanc for	20:47
book==s	12:15 20:127 26:-9 65:-8 68:16 105:-9
book	0:-15 1:-10 8:-8 9:-8 11:-18 13:-18 15:8 16:-11 17:-9 20:121 22:-10 23:-19 25:8 26:224 28:-13 29:-39 30:-9 33:-30 34:10 36:-11 37:-8 42:-8 45:-12 46:-8 47:-11 57:-8 65:-10 68:11 82:-8 88:-8 98:-9 99:-11 100:-15 102:-12 104:104 105:178 107:-9 109:-10 113:-8 123:53
the book	12:14 20:56 26:16 48:8 68:14 105:18 123:-12
book of	20:58 26:-12 105:39
march	20:22
book _ the	12:15 20:14 26:35 105:32
march $	20:22
^ book	20:69 26:-18 104:91 105:44 123:-12
october #n	20:35
book _ #n	20:27
october $	20:20 33:11
book for	13:-9 20:19 23:-9 26:71 48:8 105:17
for may	20:19
may #c	20:19 21:10
book _ @wire	20:26
september #n	20:11
wher _ @wire	20:17
did _ go	1:-10 20:27
go over	20:13 86:8
@wire _ over	20:9
over $	16:14 21:20 42:13
go in	0:23 18:8 20:23 38:9 80:18 81:15
in june	21:9
go _ june	20:9
did all	20:8
wher _ all	20:28
all _ @wire	5:11 20:15
june #n	21:9
over _ #n	63:26
wire go	18:11 20:20
did _ wire	20:10
wire _ in	21:12 120:9
all _ wire	8:43 9:25 42:21 82:-9
@day to	11:26 28:10 29:22 51:28 52:-8 53:-17 108:34 110:-12
to tomorrow	114:11 117:12
@wire _ @day	117:11
from _ to	4:-8 11:24 16:-9 20:19 28:30 29:24 44:10 51:-15 53:41 69:-11 74:-37 75:18 86:11 98:-8 104:44 108:10 110:22 119:8 123:-11
today to	20:12 28:23
to next	20:15 117:11
to _ @day	20:15 117:11
december to	28:19 52:12 100:10 109:25 110:-13
to @day	11:25 29:16 46:12 51:20 52:-9 53:-17 100:10 108:32 110:-13 114:9 117:28
of _ to	28:18 60:19 68:9 74:23 98:21 123:22
next _ until	20:10
december until	28:8
until #r	28:9
of _ until	28:8 100:9
december _ #r	53:11
#o until	53:9 109:16
from _ #o	20:19 28:23 29:9 46:-11 70:9 74:11 81:-10 88:12 109:36
the _ until	36:13 53:9 109:16
to #r	28:18 44:18 46:13 74:33 117:12
sav==ed	8:-20 19:-8 20:-10 21:185 33:-12 37:12 83:9 123:-11
sinc==e	20:-21 21:101 22:8 33:118 36:10 42:-16 44:17 56:10 97:11 100:28 106:50 107:10 123:-14
sav	4:-8 8:-20 9:-8 19:-8 20:-10 21:184 33:-13 37:11 39:11 60:21 83:9 102:21 117:9 123:-14
^ sav	4:-8 20:-8 21:90 102:22
sinc	20:-21 21:101 22:8 33:118 36:10 42:-16 44:17 56:10 97:11 100:28 106:50 107:10 123:-14
month _ sinc	21:8
sinc @day	21:9 33:86 106:9
@wire sinc	33:25
#n until	2:-9 44:10 51:10 70:10 80:9 88:11 108:11 114:8
until tomorrow	53:8 100:30
@day _ #n	43:10 51:24 69:-10 70:17 77:-9 81:-9 88:-9 94:20 95:17 96:15 101:10 104:19 106:12 107:18 110:33 114:23
the _ sinc	33:31
december _ the	28:18
sav @wire	21:9
wire _ sinc	20:-12 22:13 33:9
sinc _ of	56:12
of _ sinc	21:9
may _ the	37:28
tin sav	21:28
sav of	21:20
did _ tin	21:25
the _ sav	21:28
tin _ of	8:-8
sav _ the	8:-13 21:44 83:13 117:10 123:-11
july $	21:8
us==	4:-11 5:-10 9:11 13:-15 14:-8 15:14 17:14 20:-9 21:60 22:-10 23:-11 27:11 28:-8 29:10 31:24 32:12 33:-15 34:9 49:18 57:29 61:42 62:46 66:-10 78:-8 97:-14 99:14 103:21 108:-9 109:-15 115:17 116:29 117:15 119:14
)~"
R"~(us	4:-11 5:-10 9:11 13:-15 14:-8 15:14 17:14 20:-9 21:60 22:-10 23:-11 27:11 28:-8 29:10 31:24 32:12 33:-15 34:9 49:18 57:29 61:42 62:46 66:-10 78:-8 97:-14 99:14 103:21 108:-9 109:-15 115:17 116:29 117:15 119:14
sav us	21:10
has _ tin	21:33
tin _ us	8:-11 21:56
us $	8:-13 9:15 21:27 27:19 31:32 32:-18 57:11 61:18 99:11
save==	0:-10 2:27 8:-22 20:-9 21:79 33:-8 35:-13 36:37 37:17
save	0:-10 2:27 8:-22 20:-9 21:79 33:-8 35:-13 36:37 37:17
tin save	21:37
the _ save	21:29
save $	21:8
tin _ for	23:16
february $	21:8
this_year $	21:10
sav for	37:13 83:9 123:-8
us _ @wire	48:8
sav sinc	21:28
us _ the	8:20 34:19 117:10
save us	21:27
us sinc	21:10
sinc #r	21:12
save of	8:-11 21:13
money==	21:53 47:14
money	21:53 47:14
much _ did	21:18
wire did	8:-13 21:29
much have	8:-9 21:33
how _ have	4:-8 8:-18 9:13 11:50 21:33 27:-17
wire has	10:10 87:8
much _ has	29:24
november $	8:-8 11:17 20:44 21:58
we save	2:11 8:-15 21:20
much _ we	8:8 21:20
have _ save	8:-8 21:10 37:18
sinc september	21:13
has _ fret	42:14
save _ september	21:14
september $	21:13
sav _ @wire	21:52
was sav	21:15
was _ in	1:10 74:9 77:8 116:10 122:25
scrap==ped	20:18 21:24 39:34
scrap	0:-14 3:-19 5:-9 8:-16 20:13 21:109 22:62 23:-11 29:-14 33:-11 34:-8 35:-15 37:-12 38:-8 39:137 45:-11 52:-8 68:-8 77:34 80:147 81:-23 94:11 97:-17 99:16 111:25
is scrap	21:14 39:40
is _ over	20:16 21:17
much is	13:-9 23:15 27:13
thrown==	21:15 22:-13 39:14 78:17 80:11 120:13
away==	2:13 8:-8 11:-13 13:-10 16:-8 21:16 22:23 23:25 28:21 29:-13 30:-10 31:12 33:-12 35:-12 37:8 39:83 46:22 59:33 80:28 85:21 99:46 107:-8 108:-11 109:54 110:-9 121:9
what was	11:-15 21:26 33:85 37:-9 103:48 122:-10
thrown	21:15 22:-13 39:14 78:17 80:11 120:13
away	2:13 8:-8 11:-13 13:-10 16:-8 21:16 22:23 23:25 28:21 29:-13 30:-10 31:12 33:-12 35:-12 37:8 39:83 46:22 59:33 80:28 85:21 99:46 107:-8 108:-11 109:54 110:-9 121:9
thrown away	21:16 80:12
away $	21:15 22:27 28:31 39:74 59:18 85:12 123:-9
what _ sav	21:14
was _ of	21:8
we sav	8:-12 21:21
have _ sav	8:-12 21:21
sav $	21:19 60:22
worth==	10:16 21:54 39:19 88:16 123:-8
troubl==e	21:12
worth	10:16 21:54 39:19 88:16 123:-8
tin worth	21:55
worth the	21:20
troubl	21:12
the troubl	21:12
is _ tin	8:18 21:51 22:-9
the _ worth	21:55
worth _ troubl	21:12
troubl $	21:12
keep==ing	17:-8 21:20 23:45 53:12 83:13
keep	0:-13 1:-14 3:17 5:-11 8:-9 9:-9 11:-10 16:-12 17:-13 21:18 23:68 28:-10 29:18 30:9 32:34 33:-11 34:-15 35:-22 36:78 37:-22 44:-8 50:-16 51:19 53:9 69:-13 82:55 90:32 104:17 105:-19 110:-12 118:11 123:85
worth keep	21:9
tin _ keep	21:9
keep $	3:25 21:8 23:46
worth it	21:10
tin _ it	0:10 1:-8 21:10 41:8 123:14
saving==s	20:-14 21:164 22:-9
saving	20:-14 21:164 22:-9
^ saving	21:93
saving in	21:15
saving for	21:29
for last_year	21:13
saving $	21:22
throw==	8:-11 22:67 39:79 80:33 81:-8
throw	8:-11 22:67 39:79 80:33 81:-8
we throw	22:30
throw away	22:27 39:16 80:20 123:11
we _ away	2:11 22:18
wast==e	0:12 1:19 21:20 39:15 80:9
wast	0:12 1:19 5:14 21:30 39:15 80:8
we wast	21:15
did _ wast	21:15
wast $	0:8 5:14 39:16 80:9
scrap==	0:-12 3:-12 8:-12 21:86 22:66 23:-9 29:-10 33:-9 35:-14 37:-11 38:-8 39:103 45:-10 68:-8 77:17 80:148 81:-20 94:11 97:-15 99:16 111:26 123:-32
have i	8:-8 9:-9 11:-13 21:13 26:22 29:-13 31:26 33:65 81:11 94:18 96:10
i scrap	22:54 39:-18 123:-17
have _ scrap	21:14
scrap $	0:-11 1:20 20:18 21:13 39:50 45:-10 77:18 80:32
we scrap	21:9
may #n	17:11
scrap _ #n	1:-9 22:51 39:20 80:8
wast==ed	5:19 21:10
much scrap	21:57
we make	16:-9 114:16
how _ scrap	21:57
scrap is	21:13
ther in	25:14
scrap _ ther	21:25
scrap was	21:12
was ther	21:12
much _ was	21:12
november #n	20:8
scrap for	21:13
to us	9:-10 19:10 31:33 49:13 57:10 66:-8 117:10
worth $	10:17 21:10 88:16
^ has	8:10 9:-8 26:49 29:-9 31:49 33:62 76:-21 116:-8 123:-13
any money	21:14
any _ in	0:9 8:20
^ did	1:-8 17:35 20:-9 23:40 24:45 26:42 31:51 33:33 35:-9 39:-10 43:16 82:-15 88:-9 89:-13 96:10 105:-10 116:-14 122:11
us any	21:13
us _ money	21:13
us _ for	74:8
doe _ tin	0:12
care==	22:33 46:12
^ tin	0:51 1:-8 5:17 8:-15 13:-9 22:75 38:25
care	22:33 46:12
tin care	22:33
@wire day	22:12
care _ @wire	22:11
care $	22:18
lie==	4:14 8:11 11:12 15:16 16:9 22:33 69:-11 74:19
lie	0:-18 3:13 8:27 11:11 15:15 20:-13 22:50 53:9 69:-11 74:11 77:9 86:19 88:28 91:22
@wire lie	8:15 22:21
lie about	22:39 91:11
the _ lie	0:-8 3:14 4:18 8:-8 22:17 88:28
@wire _ about	22:32
about $	0:17 8:-10 22:30
lying==	0:29 8:19 22:20 74:8
lying	0:29 8:19 22:20 74:8
are lying	22:11 74:8
lying about	0:18 22:8
@wire _ lying	0:9 22:11
idle==	22:63 54:20
idle	22:63 54:20
idle $	22:9
lain==	22:16
lain	22:16
have lain	22:16
piece lie	22:13
what _ lie	22:13
of _ lie	8:19 22:-8
no==	0:21 1:-28 2:-11 3:-10 4:-18 6:-12 8:27 9:-18 10:-8 11:-31 12:-9 13:-25 14:-11 16:39 17:-20 18:-14 19:-9 20:-9 21:-11 22:28 23:-32 25:-24 26:-23 27:-11 28:-25 29:-29 30:-18 31:-14 32:-15 33:-19 34:-14 36:33 37:49 39:40 40:-9 41:-9 42:-19 43:-22 44:-16 46:66 49:11 50:-8 51:18 52:31 53:-15 54:-15 56:23 57:-10 59:-8 61:29 62:-12 63:-13 64:30 65:-8 68:-11 69:15 70:-8 74:-8 75:-8 76:-18 77:-15 82:-20 83:13 84:-11 85:27 86:60 88:40 89:38 90:10 91:-9 92:65 93:-8 94:-12 95:-12 96:-16 98:22 99:76 100:77 102:-16 103:-8 104:-22 105:33 106:-18 107:-18 108:29 110:-15 111:-16 112:29 113:15 114:-8 115:-10 116:-9 117:-13 118:-12 119:-10 120:16 121:54 122:45 123:35
no	0:21 1:-28 2:-11 3:-10 4:-18 6:-12 8:27 9:-18 10:-8 11:-31 12:-9 13:-25 14:-11 16:39 17:-20 18:-14 19:-9 20:-9 21:-11 22:28 23:-32 25:-24 26:-23 27:-11 28:-25 29:-29 30:-18 31:-14 32:-15 33:-19 34:-14 36:33 37:49 39:40 40:-9 41:-9 42:-19 43:-22 44:-16 46:66 49:11 50:-8 51:18 52:31 53:-15 54:-15 56:23 57:-10 59:-8 61:29 62:-12 63:-13 64:30 65:-8 68:-11 69:15 70:-8 74:-8 75:-8 76:-18 77:-15 82:-20 83:13 84:-11 85:27 86:60 88:40 89:38 90:10 91:-9 92:65 93:-8 94:-12 95:-12 96:-16 98:22 99:76 100:77 102:-16 103:-8 104:-22 105:33 106:-18 107:-18 108:29 110:-15 111:-16 112:29 113:15 114:-8 115:-10 116:-9 117:-13 118:-12 119:-10 120:16 121:54 122:45 123:35
is no	22:27 23:-8 37:30 39:57 46:17 61:13 64:-9 72:13 85:9 86:29 89:17 90:-8 98:-10 99:25 112:15 113:14
no use	1:-12 8:-8 22:47 38:11 39:34
what _ no	22:27
is _ use	22:31 39:34 72:11
use $	8:-11 22:51 35:37 39:32 85:28 123:11
what in	8:-11 22:41
tin is	0:11 22:13
is of	22:16 40:8 86:8
of no	22:16
is _ no	22:16
tin _ no	5:9
should _ throw	22:13
what of	11:19 22:16 29:-17
@wire can	5:15 22:10 80:21
throw out	22:44 39:8 80:15
can _ throw	22:17
of _ should	46:10 64:11
@wire could	0:14
of _ could	0:14
could _ throw	22:8
i throw	22:8
i _ out	5:-8 14:15 22:21 39:15 71:10 109:16
piece could	22:12
what _ could	1:9 30:17
sort==	8:-8 11:11 22:36 29:-8
sort	8:-11 11:10 22:34 29:-8 34:23
^ sort	22:36
out the	4:8 8:14 14:15 22:14 27:13 106:12
tin of	22:27
sort _ the	22:15
out _ tin	22:14 81:21
tidy==	22:38
tidy	22:38
^ tidy	22:22
tidy the	22:30
tidy _ tin	22:30
clean==	22:30 38:23 42:10
clean	4:-36 13:-11 22:46 27:12 38:23 42:95 73:-9 76:16 106:29 107:-13
^ clean	22:30
clean out	22:10 27:14 106:13
clean _ the	4:-32 13:-8 22:29 27:13 42:64
clear==	5:-12 22:40 86:59 114:15
clear	5:-12 22:40 86:59 114:15
clear out	5:-12 22:43
sort the	22:20
sort _ tin	22:20
nobody==	0:-10 1:-25 5:-11 13:-12 15:-12 20:-8 22:75 29:-10 33:-16 36:23 37:57 52:41 54:9 56:8 58:-16 59:66 63:-9 64:156 65:-9 68:12 78:8 82:14 84:-8 85:24 100:14 102:-11 108:-8 112:-12 113:-9
@wire has	8:-8 21:13 48:-10 49:-8 50:8 87:24 116:9 123:17
nobody	0:-10 1:-25 5:-11 13:-12 15:-12 20:-8 22:75 29:-10 33:-16 36:23 37:57 52:41 54:9 56:8 58:-16 59:66 63:-9 64:156 65:-9 68:12 78:8 82:14 84:-8 85:24 100:14 102:-11 108:-8 112:-12 113:-9
has nobody	22:29
nobody used	22:20 123:20
used for	25:10 83:11
the _ has	33:-9 40:12 46:23 47:23 48:-10 64:-8 75:10 76:22 79:17 82:11 98:18 118:10
@wire _ nobody	78:12
has _ used	22:21
used _ #n	0:13 1:-10 33:16 35:8 36:-9 69:9 81:-14 100:10 123:23
nobody _ in	22:19
touch==	36:17 100:16 109:12
touch	5:15 21:-11 22:46 33:13 36:17 86:33 100:16 109:12
nobody touch	22:21 36:17
touch in	22:38
has _ touch	21:-8 22:8 33:15
piece did	8:18
)~"
R"~(which _ did	19:8
touch==ed	21:-10 22:41 33:15
been==	0:-13 2:-10 4:-14 13:-13 15:21 16:-8 22:17 23:36 29:-12 33:40 34:11 35:10 40:-9 41:-8 42:-8 44:-8 60:18 63:14 66:-9 74:9 76:-12 77:29 79:8 80:8 83:16 84:11 86:8 93:10 100:15 103:8 107:15 123:26
been	0:-13 2:-10 4:-14 13:-13 15:21 16:-8 22:17 23:36 29:-12 33:40 34:11 35:10 40:-9 41:-8 42:-8 44:-8 60:18 63:14 66:-9 74:9 76:-12 77:29 79:8 80:8 83:16 84:11 86:8 93:10 100:15 103:8 107:15 123:26
has been	2:-9 22:12 35:11 42:-9 60:8 66:-8 69:12 76:10 77:30 79:8 86:10 103:10 106:13 107:24
been in	90:11
tin too	2:17
what _ been	22:13 103:8
has _ in	22:26 39:11 74:12
the _ too	18:16 41:9 97:16
too _ of	22:46
tin _ too	80:13
long $	3:13 4:18 27:25 39:-13 40:11 65:10 68:32 88:-8
sort through	22:9
through the	0:20 9:15 22:8 43:21 79:15
through _ tin	0:20 22:8
up the	22:31 24:12 53:10 64:18 98:18
up _ tin	22:32
clean up	22:24
throw _ of	39:10
of _ tin	2:9 5:8 7:15 21:18 22:10 33:35 34:8 38:-11 71:-11 74:-13 80:19
can _ clear	22:14
clear _ of	22:14
which _ may	33:9
board==	0:-13 10:-8 13:-15 16:-10 17:-15 27:65 29:-10 30:65 33:-9 34:-10 40:-17 41:-8 42:54 43:-10 44:-12 45:-9 46:-8 48:-8 56:14 57:-10 64:-10 70:10 73:20 75:106 76:-12 77:-8 81:-16 86:69 88:-16 89:67 90:12 91:-10 92:34 102:14 106:19 107:10 112:-10 123:-19
is too	3:-10 22:19 41:16 78:10 90:41
too short	0:-12 3:19 11:-8 22:57 39:29 41:47 45:-8 80:11 123:17
for any	22:13 64:14
board	0:-13 1:-8 10:-8 13:-15 16:-10 17:-15 27:65 29:-10 30:65 33:-9 34:-10 40:-17 41:-8 42:54 43:-11 44:-13 45:-9 46:-8 48:-8 56:13 57:-11 64:-10 70:10 73:20 75:106 76:-13 77:-8 81:-16 86:69 88:-16 89:67 90:12 91:-10 92:34 102:28 106:19 107:9 112:-10 123:-19
any board	22:8
what _ too	22:23
too _ for	18:18 22:19 39:9 41:-11 78:10
for _ board	22:8
board $	22:8 27:34 30:17 73:19 89:56
piece is	22:8
piece _ too	22:12
for anyth	22:15 39:9 113:27
are too	2:10 22:16 123:-10
piece are	23:23
week==s	9:11 10:14 11:53 22:18 29:41 62:9 116:-10 119:12 120:67
what _ nobody	22:26
month==s	22:17
age==s	22:16
age	22:16
used age	22:16
age $	22:16
in month	22:10
nobody has	22:31 56:12
to throw	22:24
to _ away	22:11
anyth to	22:19
ther _ to	22:19
anyth _ throw	22:19
to _ out	0:8 4:11 22:13 46:26 71:10 94:10
ther any	26:19
that i	27:8 32:11 34:12 38:8
i can	0:-12 18:10 23:13 24:10 64:17 76:23 80:11 89:26 100:20 109:18 110:8 123:-26
tin _ i	0:9
that _ can	27:8
i _ throw	22:8 123:14
tin i	0:10
i should	0:8 36:10 63:11 118:10
should throw	123:14
the _ i	0:8 3:10 6:8 11:23 14:19 27:21 40:8 71:9 76:9 91:-11 103:10
tin _ should	0:10
should _ out	5:11
anyth i	11:13
i could	1:10 25:10 29:15 107:12
we could	123:26
the _ we	9:10 11:-10 98:12 105:14 113:11 117:15 118:22
we can	30:8 67:11 76:12 100:9 101:21 119:51 121:-8 123:8
that we	5:10 11:16 30:9 52:-13 83:19 111:22
we should	85:-9 114:-16 123:42
held==	8:-13 13:-17 23:181 29:-12 37:36 40:11 83:45 88:64 89:-17 91:-8
held	8:-13 13:-17 23:181 29:-12 37:36 40:11 83:45 88:64 89:-17 91:-8
^ held	23:85 88:27
held $	23:79 37:14
held _ @wire	23:14
held the	23:12 40:12
held _ @job	83:8
is held	8:-10 23:27 83:43 123:15
held for	83:47 123:16
what _ held	83:27 123:16
held _ job	23:29 83:22 123:14
set==	1:-8 8:-9 9:-8 11:-29 13:-12 23:86 29:-8 33:-11 43:-9 44:-10 46:41 54:94 55:9 67:10 72:-11 82:91 83:30 86:42 87:-12 97:14 98:42 103:54 123:9
asid==e	8:-8 13:-9 23:81 33:9 36:-8 82:120 83:39 123:27
what all	29:-13 33:45
set	0:-8 1:-8 8:-9 9:-8 11:-32 13:-13 22:-10 23:85 29:-9 33:-12 43:-10 44:-12 46:41 54:151 55:8 67:10 72:-11 82:90 83:30 86:41 87:-12 97:13 98:85 103:43
is set	23:20 82:-10 83:8
asid	8:-8 13:-9 23:81 33:9 36:-8 82:120 83:39 123:27
set asid	23:74 82:50 83:49
asid for	23:36 33:13 82:-9 83:34
is _ asid	23:20 82:-10 83:8
set _ for	23:20 82:-31 83:37
asid _ @job	33:14 82:18
reserv==ed	8:-23 11:-8 12:-8 13:-8 23:122 25:-25 26:129 29:-22 33:-17 83:22 104:14 123:-10
reserv	0:-17 1:-10 3:-9 8:-23 11:-12 12:-8 13:-12 16:-10 19:-8 23:113 25:-25 26:126 27:-8 29:-15 33:-19 35:-18 36:84 42:-8 53:-9 72:-8 82:71 83:38 104:46 123:-11
is reserv	8:-20 23:49 25:-11 26:19 29:-10 83:31 104:17
what _ reserv	8:-10 23:9 26:25 83:19
reserv $	8:-10 23:42 25:-21 26:78 29:-8
reserv for	23:13 26:12 36:25 83:30
reserv _ the	23:19 36:15 83:23 104:8
kept==	1:-10 13:-8 23:69 29:-9 36:19 37:20 38:-9 77:9 82:12
kept	1:-10 13:-8 23:69 29:-9 36:19 37:20 38:-9 77:9 82:12
is kept	23:35 36:11
kept for	1:-9 23:70 29:-9 36:8 37:11 82:12
kept _ @job	23:32 37:12 82:-10 83:14
and for	19:20 23:104 29:12 82:-13
is _ and	13:10 57:10 62:17 94:9
who $	14:-9 15:19 28:23
for which	11:16 29:15
what _ set	23:12
asid $	23:35 82:62 83:-8
you==	0:-10 1:-22 2:-10 3:15 5:-10 7:10 10:14 11:-11 13:24 16:-19 22:-8 23:37 24:11 29:-19 30:-11 33:18 34:43 35:9 36:17 37:14 42:-10 44:14 58:-11 59:10 73:-9 76:-8 89:15 94:-13 98:19 101:15 112:15 113:20 120:12 122:12 123:21
you	0:-10 1:-22 2:-10 3:15 5:-10 7:10 10:14 11:-11 13:24 16:-19 22:-8 23:37 24:11 29:-19 30:-11 33:18 34:43 35:9 36:17 37:14 42:-10 44:14 58:-11 59:10 73:-9 76:-8 89:15 94:-13 98:19 101:15 112:15 113:20 120:12 122:12 123:21
do you	3:9 8:-8 9:14 23:11 24:13 27:17 33:10
what _ you	10:-8 23:47 27:16 34:27
you _ for	23:19 34:12
hold==	0:-10 1:-13 3:-10 5:-13 13:-15 18:59 23:17 27:-10 29:-15 33:-8 34:43 35:-27 36:124 37:54 39:-9 42:-11 69:-8 70:-9 82:72 83:15 88:18 112:-8 113:11
hold	0:-14 1:-24 3:-12 4:-8 5:-15 6:-9 11:-17 13:-21 14:-10 15:-9 16:-13 18:55 23:140 25:-11 26:-8 27:-13 28:-9 29:34 32:-9 33:-20 34:33 35:-32 36:112 37:82 39:-19 42:-24 44:-8 47:-10 49:-9 65:8 69:-10 70:-9 82:57 83:86 88:44 89:-17 90:16 107:-10 112:-10 113:9 123:11
you hold	23:17
hold for	23:32 83:17
did _ hold	23:23
hold _ the	23:14 36:9 82:18 83:17
we hold	8:10 23:36 30:10
do _ hold	8:10 23:15 36:-10 37:32 83:20 123:-14
hold _ job	18:15 83:37
hold _ @job	13:-8 18:33 36:31 42:-8 113:19
hold==ing	1:-10 23:21 36:-11 37:30 39:-9 83:18 88:27 89:-9 123:21
are _ hold	23:10
we keep	23:20 29:21 30:12
are _ keep	23:47
are you	23:32
you keep	23:25
reserv of	8:-9 23:20
reserv _ @wire	23:12
asid of	23:9
set _ of	23:9
asid _ the	23:17 83:17
held of	23:9
held _ the	83:12 88:10
are reserv	26:14
piece _ reserv	23:9
piece _ held	23:10
reserv _ job	36:10
asid _ job	23:15 82:-18 83:21
wire _ held	23:8
@wire _ held	23:16
has #d	23:15 79:17
reserv #d	23:9 36:14
has piece	15:-9 23:35 33:-9
who _ piece	15:-9 23:35 33:-9
has #n	23:15 29:10
who _ #n	23:18
hold==s	17:-9 23:102 29:46 34:-8 42:-12 65:11 82:-11 83:54 90:10
hold #d	23:10 36:32
@wire held	23:12
of _ held	23:12
#n held	23:36
what _ #n	10:12 34:10
is _ kept	23:18
of _ reserv	23:13
is _ held	23:22 37:11
is _ reserv	26:33
#n free	23:14 37:16 64:8
taken==	23:15 25:-10 26:41 71:15 94:11 103:18
taken	23:15 25:-10 26:41 71:15 94:11 103:18
is _ taken	23:16
taken $	23:16
the _ free	23:14 29:-8 109:21
anyth held	23:8
anyth set	23:20
is _ set	23:23
anyth _ asid	23:20
anyth _ for	23:12 83:12 123:-8
much of	23:17
of is	23:12
how _ of	23:17 25:16
of _ set	23:26
wire _ reserv	23:13
spring==	5:8 13:-9 22:-10 23:11 24:133 44:12 64:13 77:-8 123:39
back==	0:-22 1:-12 2:-10 4:-15 5:-8 8:-9 9:-11 11:-16 13:8 16:-21 17:-25 18:-9 21:-8 22:-8 24:123 26:-14 27:-11 28:-14 29:-25 31:-12 32:-8 33:-18 34:15 35:-17 36:21 37:47 39:-10 40:11 41:-9 42:-19 43:-16 44:81 47:-8 52:-18 54:-10 60:-12 61:-11 62:135 63:-12 64:-11 68:-8 71:14 74:-19 76:-10 81:-11 82:-13 83:25 86:10 90:-13 91:-9 92:-8 93:23 94:22 95:-10 96:-11 98:-17 100:23 101:108 103:-8 104:-10 105:34 106:53 107:-10 109:-18 110:-9 111:24 113:15 114:-9 122:86 123:16
stay==	3:40 24:33 51:18 53:29 62:10 76:-10 90:9 100:-8 101:35
interval==	24:29
spring	5:8 8:-8 9:-8 13:-9 22:-10 23:11 24:148 44:11 64:13 77:-8 123:39
^ spring	5:10 22:-9 24:46 44:17
back	0:-23 1:-12 2:-10 4:-15 5:-8 8:-9 9:-11 11:-16 16:-21 17:-25 18:-10 21:-9 22:-8 24:137 26:-14 27:-11 28:-14 29:-25 31:-12 32:-8 33:-19 34:14 35:-17 36:21 37:47 39:-10 40:11 41:-9 42:-19 43:-17 44:81 47:-9 52:-18 54:-10 58:-8 60:-12 61:-11 62:135 63:-12 64:-11 68:-8 71:14 74:-19 76:-10 81:-11 82:-13 83:25 86:10 90:-13 91:-9 92:-8 93:23 94:22 95:-10 96:-12 98:-17 100:23 101:108 103:-8 104:-10 105:34 106:52 107:-10 109:-18 110:-9 111:24 113:15 114:-9 122:86 123:16
)~"
R"~(spring back	24:67 123:45
stay	3:38 24:67 25:-13 44:17 51:17 53:28 61:-9 76:-16 90:20 101:54 109:-9 123:25
by load	24:52
@wire stay	24:13
interval	24:29
#n stay	90:11
spring _ job	24:16
back _ the	24:40 37:64 38:11 62:18 83:11
the _ stay	44:10 53:8 100:11
load _ @wire	24:17
@wire _ ~	38:8 80:16
by _ job	72:-8 82:13 83:15
back the	122:28
by mm	24:9
spring _ the	24:16
back _ @job	24:16 36:34 86:16 123:-12
#n _ load	74:12
load _ the	16:21 24:11 33:24
#n _ mm	80:14 81:17 91:10
back _ #n	34:14
@wire _ mm	49:8 65:-11 87:18 115:10
sprang==	13:-11 17:-8 24:131 33:-14 44:120 74:-9 88:-14 94:-17 101:-9 123:8
sprang	13:-11 17:-8 24:131 33:-14 44:120 74:-9 88:-14 94:-17 101:-9 123:8
what sprang	24:69
sprang on	24:78
sprang _ job	24:39
sprang of	24:33
sprang _ @job	24:16
sprang back	24:15 44:48 94:-12 123:12
back in	25:-9 37:14 38:12 62:27 74:-10 94:38 101:18
what _ back	24:32
back _ job	24:15 44:28
back of	24:14 86:16
back on	24:39 37:9 44:27 62:40 123:-11
sprang _ on	24:13 44:13
fret sprang	24:24
what _ sprang	24:14
fret _ back	123:51
which _ sprang	24:10
did anyth	24:36
anyth spring	24:33
did _ spring	24:33
spring in	24:15
anyth _ in	24:15
anyth sprang	24:17
did _ sprang	24:10
spring _ on	24:16
often==	24:28
often	24:28
how often	24:24
@wire spring	24:25
back with	62:11
with an	24:10
an interval	24:10
the _ spring	24:17
@wire _ back	24:28
with _ interval	24:21
interval $	24:24
wire spring	24:9
the interval	24:15
@wire _ spring	24:12
wire _ back	24:13
spring with	24:12
wire _ with	24:8 31:13
often doe	24:19
fret spring	123:50
often _ @wire	24:11
back $	17:-12 24:34 25:26 29:-12 44:25 62:45 100:-26 101:80 122:83 123:-13
spring $	24:18
doe fret	17:29 24:8
doe _ spring	24:17
fret _ with	1:-10 39:14
do anyth	24:11 33:26
do _ spring	24:-12 123:50
do someth	98:11
sure==	8:-13 24:59 60:11 88:17
sure	8:-13 24:59 60:11 88:17
how sure	8:-13 24:59
sure is	8:-12 24:56
sure _ that	8:-12 24:56
that $	0:41 24:28 30:-8 34:-9 52:9 54:19 58:18 92:9 111:-8 122:19 123:61
that of	8:-10 24:23 74:9
that _ @wire	24:12 118:10
that _ the	16:-9 21:9 24:10 42:23 43:15 54:10 64:13 73:10 122:8
the spring	24:19
the _ back	24:19 101:29
spring _ of	24:8
@wire with	8:-11 19:20 21:18 49:8 67:14
back by	24:8
spring _ by	24:8
by _ with	106:12
mm==	0:29 2:-18 4:-19 7:31 8:10 9:-12 13:-9 16:55 17:-19 18:14 19:-8 20:-14 22:-13 23:-8 24:8 27:-8 29:-11 31:-8 33:-11 35:-15 36:-9 37:21 38:28 39:-16 41:35 42:-10 43:-14 44:-9 45:48 48:46 49:-18 50:20 54:97 57:-8 66:-16 67:33 68:47 70:-12 73:9 74:-10 75:37 76:-19 77:-9 78:-19 81:-15 84:78 85:-9 86:21 87:48 88:-14 90:-10 91:51 92:-14 116:17 117:-8 119:-11 123:-22
for each	0:-11 4:26 24:13 27:9
each mm	24:13
back _ @wire	24:13
of _ by	78:15
load _ each	24:13
down==	1:-10 3:-14 4:-10 5:-12 9:-9 11:-9 13:-12 17:-25 23:-9 24:58 25:47 26:14 27:-8 28:-9 29:-19 33:-15 35:-11 36:-10 37:-9 39:-10 41:-12 42:-14 43:67 50:34 52:-12 54:18 62:-8 68:18 69:-11 74:17 77:-8 84:10 85:-8 86:-10 88:50 89:21 90:-8 91:48 92:-12 94:-13 95:43 96:98 98:-11 100:50 101:-17 105:-8 107:17 114:-9 123:61
^ from	5:42 19:15 20:-9 21:-11 24:13 27:9 28:-15 29:8 35:-13 37:19 49:20 51:11 54:20 57:40 72:32 74:-8 81:11 100:20 109:15 117:-11 123:-11
from which	0:13 5:25 24:13 32:15 50:17
fret stay	24:14
down	1:-10 3:-14 4:-11 5:-12 9:-9 11:-9 13:-12 17:-25 23:-9 24:57 25:47 26:14 27:-8 28:-9 29:-19 33:-15 35:-11 36:-10 37:-9 39:-10 41:-12 42:-15 43:67 50:34 52:-12 54:17 62:-8 68:18 69:-11 74:17 77:-8 84:10 85:-8 86:-10 88:50 89:21 90:-8 91:48 92:-12 94:-13 95:43 96:98 98:-11 100:50 101:-17 105:-11 106:-8 107:31 114:-9 123:58
stay down	24:31 44:10
from _ load	24:36
doe _ stay	24:15
fret _ down	96:31
down $	16:-8 24:57 25:66 26:-8 43:43 44:24 50:24 68:14 88:-10 95:13 96:26 100:8 101:-8
load doe	24:13
down with	2:-9 43:12 68:10 95:8 96:25
they==	0:-10 4:19 10:-8 17:-8 19:9 20:-8 25:25 28:-11 31:-9 32:44 40:12 44:17 49:-9 53:9 63:10 71:19 74:26 77:-12 79:-9 96:8 112:15 115:32 116:-11 117:11 118:23 119:26 121:8
^ at	4:15 9:12 13:-10 15:23 24:32 28:8 29:8 52:19 114:12 115:15 118:13
at which	1:9 4:16 10:11 13:-9 15:20 24:12 25:9 28:9 29:12 33:-8
they	0:-10 4:19 10:-8 17:-8 19:9 20:-8 25:25 28:-11 31:-9 32:44 40:12 44:17 49:-9 53:9 63:10 71:19 74:26 77:-12 79:-9 96:8 112:15 115:32 116:-11 117:11 118:23 119:26 121:8
do they	4:15 25:14 27:13
at _ load	24:34
do _ stay	24:14
from what	5:44 8:-9 19:-10 24:21
down _ the	2:-10 16:11 26:31 43:25 54:10 68:10 89:22 97:10
load hold	24:9
@wire down	24:11
which _ hold	29:44
hold _ down	88:9
keep==s	24:8 29:12 90:28 122:9
load keep	24:9
keep the	2:10 30:12 50:-15 53:12 123:36
which _ keep	24:9
the _ down	16:16 25:40 76:8 89:17 95:15 107:27 123:-10
hold the	90:10 123:22
hold _ @wire	8:10 68:10
keep fret	90:19
fret down	16:19
machine==s	8:-15 9:-9 11:-13 12:-11 13:-8 14:-22 23:-10 25:200 26:43 28:-8 29:65 32:-8 56:-10 97:55 99:64 123:-13
machin==e	1:-8 11:-18 12:-8 14:-8 16:-9 23:-9 25:14 26:74 28:-13 29:43 30:-9 48:-11 51:-13 53:-13 54:-10 55:-9 56:-10 57:-23 58:11 60:-16 63:-11 84:-12 97:160 98:46 99:145 100:34 101:78 102:66 103:-14 104:23 107:-9 110:-28 119:-12 121:-9 123:-20
machine	8:-15 9:-9 11:-13 12:-11 13:-8 14:-22 23:-10 25:200 26:43 28:-8 29:65 32:-8 56:-10 97:55 99:64 123:-13
^ machine	25:76 99:-10
machin	1:-8 11:-18 12:-8 14:-8 16:-9 23:-9 25:14 26:74 28:-13 29:43 30:-9 48:-11 51:-13 53:-13 54:-10 55:-9 56:-10 57:-23 58:11 60:-16 63:-11 84:-12 97:160 98:46 99:145 100:34 101:78 102:66 103:-14 104:23 107:-9 110:-28 119:-12 121:-9 123:-20
machine machin	25:10
machin bench	97:-13 98:-8 99:33 100:11 104:8
sander	0:-13 1:-12 4:-9 5:-11 6:-10 7:-8 8:-34 9:-30 10:-8 11:-32 12:-16 13:-24 14:-27 15:-15 16:-18 17:-17 18:-8 19:-8 20:-9 21:-10 22:-14 23:-26 24:-11 25:233 26:110 27:-18 28:-32 29:54 30:-16 31:-15 32:-14 33:-24 34:-20 35:-9 36:-8 37:-24 39:-12 42:-19 43:-8 44:-9 45:-12 46:-14 47:-16 51:-22 52:-21 53:-20 54:-22 56:-13 57:-8 59:-11 60:-8 61:-10 62:-12 63:-12 64:-23 76:12 82:-9 83:-10 85:-9 86:-10 88:-14 90:-12 96:-8 97:-48 98:200 99:93 100:184 101:173 102:103 103:-27 104:175 105:145 106:-14 107:-18 108:-8 109:-25 110:-28 111:-14 112:-13 113:-8 116:-11 117:-14 118:-10 120:-11 121:-12 122:-12
machin sander	97:-24 98:19 99:27 101:9
machin _ machin	25:19 26:9 97:-27 99:-35 100:13 101:29 110:-8
sander $	13:-8 14:-9 25:76 26:-16 27:-8 29:39 51:-8 76:21 98:50 99:30 100:-18 102:80 103:-8 104:27 105:23 123:16
belt	23:-8 25:33 26:21 29:23 41:16 98:44 99:17 100:66 101:39 104:48 105:22 110:-12 123:-15
machin belt	26:10 97:-9
belt sander	23:-8 25:33 26:21 29:24 97:-9 98:45 99:18 100:41 101:41 104:50 105:23 110:-11 123:-15
sander machin	26:15 97:-13 99:-14
machin press	25:12 97:-19 99:17 101:26 104:9 110:-9
press machin	25:14 97:-10 99:-23 101:22
machin _ sander	26:10 97:-11 98:14
belt _ machin	99:-9
press _ press	25:10 99:-11 101:9
press _ sander	99:-8 101:10
what machine	25:60 29:-10
machine are	25:37
machine _ ther	25:28 97:19
machine have	25:29
machine _ we	8:-8 25:47 29:-8
which machine	25:20 26:41
machine do	25:18
show machine	25:23
machine $	25:70 29:25 56:-8 97:39 99:48
the machine	14:-16 26:8 29:43 97:40 99:48
is sander	25:41 26:11
sander in	26:29
in use	123:20
is belt	25:18
sander free	25:29 29:33
is _ sander	25:79 26:19 98:11 123:-14
is _ free	29:33 110:-8
servic==e	5:9 16:-10 22:-11 25:68 26:-12 29:-12 85:13 100:45 101:112 123:-9
is bench	25:33 26:13
bench in	25:14
servic	5:9 16:-10 22:-12 25:68 26:-13 29:-12 51:-8 85:13 100:55 101:112 123:-9
in servic	25:52 101:21
bench _ servic	25:14
servic $	25:46 100:-17 101:104
^ sander	26:68 29:8 98:10 99:24 100:78 101:43 104:45 105:-22 123:-14
^ bench	98:42 100:73 101:39 104:21 123:-11
press _ servic	25:20
sander down	25:9
is _ down	26:14 68:10 89:21 100:-32 123:43
^ anyon	25:14
anyon at	25:14
at at	35:10 82:14 96:9 104:20
at press	25:17 106:39
at _ press	25:38
is at	13:13 25:9 102:-8 123:17
press now	25:16 43:10 102:22
who _ at	25:17 102:-8
who at	25:21
at sander	25:12
who _ sander	25:17
at on	25:16 33:13
on sander	25:15 29:12
sander now	25:20 98:32 102:34
anyon _ on	25:11 37:-13 64:45
at _ sander	25:-8 76:23 102:45
on _ now	25:11 117:12
)~"
R"~(on press	25:14
is anyon	25:9
is press	11:12 13:-10 25:60 43:19 123:46
how _ press	25:23
how _ sander	8:-10 25:31
how _ bench	8:-8 25:26
is using	25:22
who _ using	25:22
is _ belt	98:10 100:9
belt _ now	25:8 102:15
has press	25:8
who _ press	25:14
has _ now	25:15
use==s	25:10 72:9 82:15
who use	25:10
use belt	25:13 100:8
who _ belt	25:15
use _ sander	25:13 100:20
bench now	60:18 102:18
use press	25:14 100:10
has belt	25:9 26:13
has _ sander	26:34 29:-10
work==ing	14:9 16:-10 25:74 28:38 29:-14 51:12 57:8 60:-14 61:-8 62:13 100:-8 107:31 108:17 109:-12 110:16 111:8
is work	25:10 111:17
work at	25:21 52:10 57:14 60:35 106:11
who _ work	25:10
is _ at	14:31 15:-9 29:9 50:15 77:16 94:10 96:11 102:27 123:-8
at belt	25:-11 102:15
work on	13:-16 14:-10 27:19 28:21 33:15 37:-14 52:34 53:20 64:43 106:41 107:22 108:27 109:-13 110:45 111:-13 123:-15
work _ press	25:10
press _ right	25:13 43:19
is _ back	23:12 25:14
sander ok	25:14
okay==	3:21 25:18
okay	3:21 25:18
bench okay	25:18
is _ okay	3:10 25:18
okay $	3:10 25:18
sander out	25:9 100:8
when _ sander	25:12
^ until	9:13 25:15 28:11
until when	9:13 25:15 28:11 30:9
until _ is	25:15 51:11 113:34
when _ belt	26:10
belt _ out	100:8
press down	25:44
when _ press	25:10
sander back	101:39
press out	25:9 100:23
of servic	25:12 85:14 100:27 101:18
out _ servic	25:12 85:14 100:27 101:18
bench is	13:-9 14:39 15:14 60:-8 98:39 102:-8 104:22
is down	25:13 50:13 91:9 100:55 123:10
bench _ down	25:13
sander is	29:-8 99:15 100:16 104:24 123:15
sander _ free	25:10
belt _ is	101:9
sander _ down	100:12 123:47
which press	25:14
press is	25:-24 29:10 100:36 101:71 123:27
press _ down	100:23
press _ out	100:11
which work	12:9 23:12
use sander	25:10
which _ use	25:10
stage==s	13:-12 25:13 27:224 30:-10
stage	13:-12 25:13 27:224 30:-10
which stage	25:15 27:15
stage need	25:10
need sander	104:13 105:16
stage _ sander	25:12
need belt	25:15
need _ sander	25:13 102:15 104:17
stag==e	13:15 16:-9 17:-16 27:57 29:-12 30:-8 42:32 43:-8 44:-13 71:-17 98:-9 99:-10 102:85 103:80 106:25 107:17
stag	13:15 16:-9 17:-16 27:57 29:-12 30:-8 42:32 43:-8 44:-13 71:-17 98:-9 99:-10 102:85 103:80 106:25 107:17
which stag	27:23
sander used	25:10
what _ belt	25:12
sander _ for	25:11
press need	25:10 98:18
sander need	98:15
is _ used	34:22
sander for	25:16 100:-8 104:64 105:27
belt _ for	25:17 104:14
is done	11:-9 13:26 16:-11 25:16 29:-16 42:14 43:41 44:21 71:-9 74:10 102:81 113:29 123:-15
done at	43:19 102:29
what _ done	13:40 25:41 29:-12 33:20
done _ press	43:-8 102:36
done _ belt	102:15
on belt	29:10
on _ sander	25:13 26:-9 29:26 98:9 102:42
done _ sander	102:11
at bench	60:20
done _ bench	25:17 102:8
on bench	25:10 29:10
we _ belt	25:13 104:12
need bench	25:20 102:8 104:14 105:14 123:-9
bench for	25:20 100:14 103:-8 104:36
we _ bench	25:20
^ stat	25:48
the sander	13:-9 14:-8 25:49 26:17 28:-9 29:14 33:-10 47:-8 53:-11 76:20 97:-9 98:27 99:24 100:20 101:17 102:100 103:-8 104:28 105:43 123:35
stat _ the	25:22
of _ sander	25:19 26:10 97:-8 98:9 99:8 105:19
of _ press	16:-15 25:9 43:11 54:17 85:14 103:9
of sander	25:11 98:21
stat _ sander	25:11
of bench	25:10 26:8 98:18
are down	100:11
many bench	25:18
bench _ we	25:8
sander are	101:36
bench are	25:9 101:34
bench _ ther	25:10
many sander	8:-10 25:25
sander do	25:11
sander _ we	8:-9 25:23
booking==s	26:259 29:-13 61:-8 100:-10
booking	26:259 29:-13 61:-8 100:-10
^ booking	26:75
tomorrow day	117:10
sander _ tomorrow	26:37 29:-11 100:9 104:39
press _ @day	11:10 25:-8 26:38 104:38 105:13 123:-8
sander _ afternoon	104:9
part _ machin	26:9
press _ morn	100:27
bench _ #o	100:9
sander _ this	26:12
this _ the	1:10 38:-10 53:19
#o _ this	33:16
week _ machin	29:9
sander _ sander	98:23
next _ afternoon	26:9
sander _ #r	105:9
machin $	97:15 98:19 99:22 102:78
@day day	28:-8 53:-8 109:9 110:11
booking _ bench	26:11
press _ afternoon	104:17
the _ machin	102:14
sander _ next	26:34
press _ #o	105:11
list booking	26:13
booking for	26:44
list _ for	31:10
booking _ #r	26:9
booking $	26:107
show booking	26:8
booking in	26:10
in next	110:11
@day morn	29:11 52:9 109:25 114:23
next _ morn	52:11
the booking	26:35 105:10
booking _ @day	26:17
in _ afternoon	42:18 52:10 53:8 75:-9 100:13 104:10 109:20
my booking	26:21
booking on	26:12
list _ booking	26:14
my _ on	26:9 63:20 110:23
booking _ this	26:11
^ my	12:42 28:23 29:12 33:37 57:17 68:8 110:21 122:27 123:-9
in tomorrow	110:13
booking _ tomorrow	26:14
show _ booking	26:16
in this	8:-9 14:24 21:9 25:24 26:8 29:-9
for _ sander	29:22
belt _ in	26:10
in _ morn	26:17 109:23
booking of	26:35
the afternoon	11:18 42:18 52:9 53:8 75:-9 100:12 104:10 109:32
on _ for	0:-11 4:18 16:16 17:13 29:-8 115:13
bench _ #r	104:9
sander on	53:-8 104:31 105:9 123:20
#r morn	26:8
the even	53:11 65:11 109:13
sander _ today	104:13
on _ in	65:16 109:19
in _ even	53:11 65:11 109:13
book==ed	11:-11 13:-9 23:-9 25:18 26:200 28:-8 29:-26 33:-9 105:10 112:8 123:-9
has bench	26:15 104:33
book on	26:36
who _ bench	26:17
has _ book	26:26
sander book	26:21 105:16
book in	116:10
sander _ in	25:-11 101:23
who book	26:13
book bench	26:8
book _ book	26:-10 105:11
book $	26:74 33:-17 104:19 105:32 123:11
sander _ @day	26:14 29:14 100:10 123:19
has book	26:9
book sander	26:9
who _ book	15:14 26:22
book _ in	26:12
bench on	104:18 105:28 110:-9
when has	26:11 28:-10 29:21
book belt	104:10
sander reserv	26:10
when _ book	26:16
book _ sander	104:21
bench reserv	26:12
is book	15:13 25:-8 26:67
booking _ @person	26:17
@person on	62:9 63:44 104:10 108:26
@person _ the	26:39 28:-10 30:23 42:35 46:-8 49:13 56:-8 61:13 62:63 63:47 64:9 104:19 106:-9 109:23 123:-29
for @person	29:66 58:17 59:10 100:-8 104:36
@person for	109:14
@person _ this	109:9
@person @day	28:-11 51:-8 108:30 110:16
@day in	100:15 109:19
of _ @day	28:-13 51:13 53:-12 70:8 105:14 108:21 111:11
@person _ in	28:32 29:-11 58:28 60:-14 61:-9 62:18 109:18 110:44
what _ book	26:51
are _ #o	69:11
on @day	1:-8 8:-9 11:-13 12:-8 14:-13 15:-8 16:-8 25:-14 26:34 28:60 29:15 31:-8 44:-22 49:-9 51:21 52:18 62:-9 88:-8 93:-16 96:-8 100:18 104:20 105:27 107:-10 108:76 109:34 110:19 111:-28 114:20 115:8 123:113
book _ @day	26:17
for _ even	26:9
i reserv	26:14 33:-8 104:8
did _ reserv	26:18 33:-10
book==	26:12 32:11 33:-15 34:13 48:8 100:-9 104:120 105:-15 116:9 123:11
i book	26:28
have _ book	26:25
book next	25:35 26:-21 29:-9
@day afternoon	26:23 51:-11 52:18 53:12 109:10
did _ book	26:18 33:-13
@person reserv	26:13
reserv in	82:14 83:-8
what _ @person	12:23 26:21 29:32 33:44
has _ reserv	26:10
@person book	26:31 33:-14 123:26
did @person	26:63 33:30 105:-9 123:-14
reserv on	26:9
@person _ on	12:25 29:14 30:28 33:9 60:-8 62:24 108:-13 110:29 123:36
next _ in	100:8
@person _ for	26:-8 28:26 29:67 108:-9 109:-14
taken for	26:13
the morn	26:9 52:19 100:9
is _ book	26:18
sander taken	25:-8 26:36
taken _ @day	26:36 29:-8
sander _ on	26:14
press book	25:34 26:-16 29:-10 105:19
have press	11:-14 16:-8 26:28 43:9 99:33 104:23
have bench	26:16 99:15
i _ bench	26:17 104:21
have sander	104:14
i _ sander	104:22
sander the	26:8
have _ sander	99:19 123:31
belt _ the	26:8
sander _ #o	26:8
anyth book	26:19
anyth reserv	23:-9 26:15
kind==	8:22 20:-8 24:12 27:32 30:11 43:-13 48:25 74:-11 97:8 99:18 109:10
bound==	13:33 27:48 30:8 36:10 45:8 69:-10 84:-10
^ stage	27:68
kind	8:22 20:-8 24:12 27:32 30:11 43:-13 48:25 74:-11 97:8 99:18 109:10
new_board	27:17
kind new_board	27:15
bound	13:33 27:48 30:8 36:10 45:8 69:-10 84:-10
fil	4:-9 25:-9 27:31 29:-8 30:23 38:13 42:25 43:-8 57:-8 76:25 96:26 102:50 107:21 123:-10
end fil	38:14 42:24
fil end	27:22 30:10
round	5:20 16:-8 18:9 25:10 27:43 28:8 42:11 67:10 87:8 93:15 103:28
end round	27:10
@job kind	27:9
some_slot	27:8
#n kind	27:12
@job fret	35:9 42:-10 44:20 69:17 72:12 95:8 106:26
kind refret	27:12
stage _ fil	27:13
round _ the	5:22
job _ kind	27:13
#n _ round	67:11
fret _ fret	92:12
#c _ #c	3:-11 5:9 43:-9 45:10 84:16 86:8
kind _ job	27:12
#n _ refret	30:20
refret _ #n	30:14
#n fret	2:-18 3:-19 4:40 5:-8 13:-12 16:-21 17:46 27:89 29:-8 30:70 33:-15 38:-8 40:9 41:-9 42:-8 43:11 45:41 50:27 71:17 81:-11 84:12 92:-9 96:-11 103:25 123:-18
)~"
R"~(round end	27:8 38:8
#c job	71:19 91:-9
job _ fret	17:61 40:11 91:15
#c _ @job	71:11
fil fret	96:28
stage _ @job	27:35
stag _ job	27:19 42:13 71:-9 106:29
bend _ job	42:-9 107:44
fil _ #n	96:13
the stage	27:75
stage of	27:47
stage _ job	27:48
are stage	27:10
what _ stage	27:10
are _ @job	4:33
stage _ the	27:36
are _ stage	27:9
stage $	27:27
list _ stage	27:23
refret==	27:64 29:-18 30:129 34:-8 76:21 123:-8
stage for	27:22
whol refret	27:13
for _ refret	30:8
refret $	9:23 27:29 30:26
of a	27:26 30:-11 41:15 51:8 53:-8 68:10 70:9 79:16 91:19
a whol	27:10 30:9 32:13 62:10
stage _ a	27:13
a _ refret	30:33
for an	30:10 104:27
whol job	30:27
for _ whol	5:12 20:16 29:9 62:10
fil==ed	27:19 30:23 38:14 42:28 76:27 96:27 123:-9
fil refret	30:9
a job	102:10
what stage	27:34
stage doe	27:39
a refret	27:40
doe _ refret	27:8
an _ refret	30:10
round==ed	42:13
stage has	27:14
has a	40:13 48:-12 87:26 93:30 98:12 109:19 123:-10
with round	30:9 38:8
whol _ with	30:10
with _ end	27:10 30:28 38:16 41:12 74:-10 77:9
do on	13:-8 27:18 29:11 33:13
still _ do	13:-11 27:23
left _ be	27:19
to _ done	11:8 12:27 13:-18 27:34 29:18 30:-9
done _ the	25:-8 33:17 43:8 71:19 102:17 107:19
done for	27:10 39:16 42:19 107:33
done _ @job	13:30 27:14 42:42 107:-9
done _ job	42:10 43:9
left _ job	13:-8 27:23
left _ @job	27:10
the work	13:-10 27:31 63:22 108:11
doe _ work	28:37 29:-25 34:58 61:32 100:17 108:18 110:-13 123:-9
stage take	27:10
do _ stage	27:8
long _ stage	27:11
do _ of	24:12
of _ refret	27:14
a _ take	103:20
the stag	102:10
with fil	27:9 30:14
doe _ take	9:-9 27:31 32:28 103:14
@job _ take	37:10 82:11
#n still	13:30 23:47
job _ still	13:35
#n _ take	37:20
far is	27:32
far _ @job	13:-13 27:17
far _ job	13:15
with _ work	13:-9 27:17
work _ job	27:13 107:10
we on	12:16
on _ work	27:13 57:42
far am	27:10
i on	27:10
how _ am	27:10 29:15
am _ on	27:10
much work	8:-9 13:-8 27:55
work is	27:33 29:9
how _ work	8:-9 13:-8 27:55
work _ on	27:34 28:-10 110:10 111:12
work _ in	109:14
is _ job	15:13 27:12 36:16 102:10
much _ left	27:25
much _ still	27:13
is _ refret	27:17 30:-8
work _ a	2:13 79:-10
is _ whol	27:9
a _ job	23:15 30:18 34:15 102:33 103:9 123:-9
next stag	17:-8 27:22 106:23
stag of	27:23 102:10 106:23
the _ stag	17:-8 27:21 102:20 103:15 106:28
stag _ the	13:24 102:27
what come	13:23 16:8 17:-14 23:-9 27:13 29:41
come _ with	27:9 58:11
stag come	27:15
stag _ next	27:23
stag is	13:23 42:13
come _ on	16:-8 17:-14 27:13 29:18 108:26 109:-13 110:20 117:15
check==ing	106:9 109:25
of board	102:14
board take	37:10 103:11
doe _ the	27:11
of _ take	103:16
doing==	4:-10 13:-8 15:32 17:-10 28:-13 29:61 30:13 33:-8 46:-13 47:20 63:18 103:14 106:14 107:8 112:17 123:-12
doing	4:-10 13:-8 15:32 17:-10 28:-13 29:61 30:13 33:-8 46:-13 47:20 63:18 103:14 106:14 107:8 112:17 123:-12
doing slot	107:12
fret take	102:16 103:14
tru==ing	13:-10 31:20 33:-9 34:11 42:35 86:-10 88:11 102:13 103:50 106:53 107:22
tru	13:-15 31:19 33:-10 42:75 59:11 63:-8 64:13 75:-11 86:-19 88:8 93:13 102:13 103:48 106:79 107:19 112:-12
tru the	59:12 75:-9 106:43 123:10
tru _ fret	42:-9 106:16
clean==ing	22:11 27:14 106:36 107:-11
clean the	106:23 107:-10
the board	42:20 75:24 76:-10 86:24 88:-11 89:47 90:-8 92:38 106:10 123:-10
of _ board	18:10 73:-11 81:-12 90:27
board _ on	42:52
pull==ing	2:-8 42:27 71:-14 76:32 102:55 103:8 106:81 107:41 123:-8
doe pull	27:11
pull board	102:13
long _ pull	27:11
true==ing	102:8 103:8 106:22
true	8:37 27:10 42:63 103:21 106:36
pull fret	0:49 38:17 71:43 78:10 94:12 106:16 107:8
take _ @job	27:9 64:10
nip	0:19 25:9 38:8 42:19 54:10 76:22 102:11 103:14 106:20 123:-11
doe press	27:20 32:-11
press take	27:19 32:-11 98:28 103:-8
long _ press	27:20 32:-11
polish	13:-8 25:-12 27:51 42:85 97:11 98:-12 102:43 103:12 106:-14 107:21 123:-8
polish _ on	102:13
seat	13:-13 16:-9 17:-11 24:8 27:26 32:-11 42:88 43:-8 44:-9 63:-8 64:-11 74:-10 76:-15 90:-8 94:121 96:-9 98:-10 102:73 103:22 106:47 113:-10 123:10
doe seat	27:19 32:-9
seat take	27:19 32:-9 103:8
for #c	54:16 59:42 84:25 115:10
long _ seat	27:19 32:-9
take _ #c	58:-13 59:35 72:17
doe cut	27:18 32:-12
cut take	27:17 32:-12 103:32
long _ cut	27:18 32:-12
recheck take	103:10
corner	27:50 42:15 43:-9 97:12 102:39 103:36 123:17
pull==	0:9 3:10 42:15 56:18 71:28 106:9 123:-15
it take	27:16 32:14 120:10
take to	32:34
to pull	3:10 71:37 106:10 123:-15
board of	42:21 75:19 86:47 89:-15 92:28 106:25 123:-9
long _ it	9:30 32:12 67:11
pull _ of	0:-8 38:17 106:13 107:11
board _ job	42:-9 75:36 86:36 88:-8 89:16 92:29 106:10 123:-8
true==	8:38 27:11 42:51 106:13
to true	27:12 106:20
true end	106:8
end of	30:25 38:12 69:10 70:-8 75:11 78:20 106:10 113:12
take _ true	27:12
to _ end	42:19
true _ of	106:12
end _ @job	106:22
to _ fret	15:20 50:14 71:27 74:15 77:8 91:15 123:11
pull _ for	106:13
fret @job	15:21
true _ @job	106:14
nip==	0:13 25:10 54:10 102:-8
to nip	0:13
true the	106:10
fret on	2:53 4:29 13:-9 16:-12 17:22 27:-21 33:31 42:-10 44:-13 91:8 92:15 96:9 102:9 107:12
dress==	56:41 102:29
to dress	56:41
long _ i	27:12
of $	5:23 27:10
long _ we	4:-11 8:-9 9:11 11:50 27:-8
board _ @job	106:15
to bend	18:10 106:13
pull the	2:-10 27:13 33:30 42:22 47:13 56:18 71:-16 102:29 106:46 107:10
pull _ fret	2:-9 33:30 42:-10 78:13 102:17 106:8 107:10 123:17
pull _ board	102:8
hour==s	5:-8 11:-27 12:-11 23:-8 28:186 29:-39 32:10 33:-9 42:11 43:11 44:-10 51:79 52:-16 53:66 54:39 60:-8 61:-9 62:-10 103:26 108:108 109:-15 110:11 114:-10 117:-9 119:14 123:-10
hour	0:-9 1:-12 3:-10 4:-12 5:-10 6:-8 8:-8 9:-9 11:-30 12:-12 13:-10 16:-16 17:-9 20:-8 23:-11 25:-12 26:-13 27:-11 28:172 30:-10 31:-9 32:8 33:-13 34:-11 35:-14 36:12 37:12 39:-9 42:28 43:12 44:-13 46:-10 49:12 51:73 52:-15 53:68 54:32 60:-10 61:-10 62:-12 71:-11 74:-11 77:-12 80:-8 83:17 84:-12 88:-14 90:-10 94:20 98:-10 102:-8 103:115 104:39 105:-9 107:13 108:105 109:-25 110:18 112:-8 114:10 117:-12 119:11 122:-8 123:-31
^ hour	28:77 53:39
hour person	108:8
@person person	28:21 29:20 61:-11 62:-11 63:-15
~ day	28:8 53:9 110:-9
hour _ @person	28:18 51:-21 108:44
mine _ person	28:9 29:8 60:-8
person _ person	28:21 29:20 61:-11 62:-11 63:-15
@person _ @person	28:21 29:20 60:16 61:-12 62:-14 63:-18
mine _ day	28:8
~ _ today	117:12
today _ @person	61:29
@person _ #r	110:12
@person _ tomorrow	110:14
the _ mine	63:43
week _ last	52:11
@person last	61:28
@day _ ~	52:14
the _ person	58:11
tomorrow _ ~	52:11
@person _ next	28:29 109:10
next _ #r	104:24 110:10
when are	28:25 29:9
shop open	28:51 111:14
on from	28:19 29:30 108:-8
from #r	28:-8 51:25 53:9 74:12 104:13 109:-14 110:32
#r to	44:16 74:16 109:11
open _ from	12:17 28:22 51:23 53:-13
to _ #o	28:20 33:9 74:8 109:22
hour is	28:12
hour _ the	28:49 51:15
open _ #r	51:24 52:14 111:-10
clos==ed	11:-11 28:25 29:-13 31:64 42:35 46:-9 51:119 52:88 64:-10 86:24 109:-10 111:66 121:9 123:-44
clos	11:-16 26:-10 28:20 29:-21 30:-12 31:68 33:-9 37:-8 42:32 46:-13 51:99 52:184 53:-16 54:-11 56:-8 59:9 64:-13 86:21 97:-10 100:-10 105:-9 107:-10 108:-9 109:-19 110:-13 111:184 112:-9 117:-15 122:-8 123:18
we clos	28:18 52:14 111:-10
clos for	28:8 52:14
for from	28:14 109:9
#o to	46:-8 109:29
to today	117:11
are _ clos	28:15 52:-23 111:12 123:30
clos _ from	86:8
shop clos	28:29
clos from	28:9 52:33
the _ clos	28:29
shop _ from	28:17 52:10
clos _ today	28:9
@day _ #r	28:-14 51:50 53:-10 108:23
clos _ this	52:8
till==	9:22 11:-11 13:-10 22:8 23:10 28:43 29:-11 31:15 50:20 51:13 52:14 53:29 96:23 100:43 104:-10 108:-15 109:-12 110:73 113:21 114:20 116:-9 117:22 123:-35
till	9:22 11:-11 13:-10 22:8 23:10 28:43 29:-11 31:15 50:20 51:13 52:14 53:29 96:23 100:43 104:-10 108:-15 109:-12 110:73 113:21 114:20 116:-9 117:22 123:-35
from _ till	51:8
clos $	28:20 42:20 51:33 59:13
open==ing	2:-10 5:12 28:44 53:43 108:-8
open hour	51:82 53:-21 108:-15
are _ hour	28:50
hour $	11:-12 28:85 29:-15 51:28 53:35 56:8 100:-11 103:83 104:46 108:68 110:-12
hour for	28:38 29:-11 51:18
the _ hour	28:-14 51:22 56:11 108:26
open _ for	28:9 51:17 53:-9
hour _ today	53:22
for _ to	103:25 109:11
are our	32:10
hour next	28:11
)~"
R"~(what _ our	5:21 22:11
open _ next	28:12 53:9
hour _ #n	51:-11 53:8 108:8 110:14
^ our	54:69 87:11 121:9
hour in	108:11
in from	109:-8 110:26
till @day	100:38 114:16
open _ in	28:11 97:14
the hour	14:11 28:26 32:15 51:10 53:11 119:17
show _ hour	28:14
hour _ #o	53:12
hour _ next	28:20 51:-9 53:12
in _ week	62:11
hour on	29:25 51:11 53:16 108:-9 110:20 123:-8
clos==e	51:-15 52:116 59:12 109:-8 110:-8 111:86 123:-16
clos on	52:19 111:32 123:65
clos _ next	52:-15 111:20
do _ clos	111:11 123:-8
shut==	28:17 29:-11 51:32 52:146 109:-8 110:-12 111:40 123:-12
shut	28:17 29:-11 51:32 52:146 109:-8 110:-12 111:40 123:-12
we shut	28:42 51:9 52:-17
open _ tomorrow	52:8 53:17
open next	51:-14 52:32 53:20 123:-9
until _ are	80:12
open _ @day	28:27 52:33 53:25 108:-14 111:-14 123:40
late==	8:-8 9:-13 11:59 12:-21 13:-9 29:31 31:13 32:42 51:-9 53:25 110:13 117:54
late	8:-8 9:-13 11:59 12:-21 13:-9 29:31 31:13 32:42 51:-9 53:25 110:13 117:54
how late	28:11 29:-9 32:48
late are	28:12
for now	29:-10 36:31 64:9 107:70
late _ we	28:12
tomorrow till	110:9
tomorrow _ @day	109:18
@person work	12:-8 28:18 29:-16 51:-10 60:31 61:-15 62:28 63:-9 108:74 109:-11 110:51
to #o	109:11
when _ @person	28:54 29:-20 30:28 33:14
work _ from	28:18 109:10
@person come	28:34 58:14 108:-9 110:25
doe _ come	28:35 72:-21 123:27
come $	4:14 9:-10 19:-15 27:-14 31:71 32:21 49:-8 116:60 117:-8 118:24 123:-16
come in	19:31 28:28 48:9 58:27 97:8 108:24 109:-13
work $	16:-11 23:9 25:41 27:-10 28:38 29:44 34:50 107:29
@day _ @day	11:30 29:20 51:24 53:-14 108:69 110:-22
is @person	12:25 26:-11 28:45 29:19 58:79 59:-29 63:43 109:-10 110:-12 123:56
@person in	28:14 62:12 110:37
in on	13:10 28:23 29:-8 51:-8 53:19 108:36 109:-14
in _ from	54:14
@person ther	28:18
is _ ther	28:18
@person here	28:12 108:-9 110:24
here on	29:-14 33:28 51:16 52:18 85:8 108:-8 109:27 123:-17
is _ here	8:18 28:34 109:32 123:-21
@person _ from	51:-10 108:28 109:36 110:-14
@person away	109:17
is _ away	23:32 28:21
today until	53:15
@person _ of	26:-8 105:23
of _ today	62:28 109:-8
@person _ today	109:51 123:-9
in _ to	5:17 74:16
ther _ next	5:12
till the	22:10
i work	28:57 29:-11 110:23
do _ work	28:57 29:-12 109:11 110:-12 123:-9
work _ today	52:10
till #r	117:10
till #o	52:18
in _ today	60:-10 109:35
work of	27:9
of _ next	49:-20 65:-13 123:50
my hour	28:46 110:24
my _ for	29:20
hour _ @day	29:27 51:30 53:-13 108:-9
hour of	28:18 97:9 108:25
work _ #o	110:10
work _ this	14:10 109:9
is away	28:9 109:27
who _ off	28:25
out @day	46:20
who _ out	28:18
is _ @day	14:-11 28:31 43:11 51:-9 70:10 108:48 109:14 110:-22 117:8
out for	28:8 107:22 109:11
off for	13:10 23:-15 83:32 107:14 109:14
the _ till	113:22
somebody==	8:-11 11:-13 15:9 22:-8 23:46 28:21 29:10 30:12 33:11 36:10 57:10 63:-8 64:21 67:9 69:-12 75:9 119:10 123:73
somebody	8:-11 11:-13 15:9 22:-8 23:46 28:21 29:10 30:12 33:11 36:10 57:10 63:-8 64:21 67:9 69:-12 75:9 119:10 123:73
is somebody	28:23
is anybody	13:-12 15:51 17:-11 23:18 26:13 28:31
anybody in	28:19 59:9
anybody here	28:13
everybody==	9:-8 12:-23 14:81 15:-8 25:-16 28:21 33:21 64:60
everybody	9:-8 12:-23 14:81 15:-8 25:-16 28:21 33:21 64:60
^ everybody	28:14
everybody hour	28:23
are everybody	28:8
what _ everybody	28:8 33:22
hour from	28:30 32:17 53:10 110:-9
agenda==	26:-8 29:126 60:17 98:10 103:-8
agenda	26:-8 29:126 60:17 98:10 103:-8
^ agenda	29:83
#n person	106:10
@job mine	13:-19 15:64 63:35 123:-8
sander _ @person	104:10
@person _ afternoon	109:12
person _ job	63:14 73:-9 106:11
@person _ job	15:47 42:-10 63:114 64:-10 123:-24
job _ person	14:12 63:10 73:-9 106:12
#n _ @person	58:29 59:-10 63:34 64:47 74:-13 104:17 106:27 123:8
@job _ @person	63:54
next _ @person	29:40 110:18
sander _ ~	98:21
bench job	12:11 102:32
@person _ bench	60:12 104:31 110:-8
december _ @person	109:18 110:16
schedul==e	11:-10 16:29 29:87 100:-10 104:-10 114:11
schedul	11:-11 16:29 29:99 31:10 100:-10 104:-10 114:11
the schedul	29:14
me _ schedul	29:9
schedul $	29:11
schedul _ tomorrow	29:48 100:-10
the agenda	29:10
agenda $	29:11
-==	0:26 2:40 5:13 6:-15 8:-21 9:23 10:-8 11:35 13:10 16:26 18:14 21:12 22:-11 24:30 25:-10 26:-9 27:20 28:-21 29:11 30:-11 31:-10 32:-10 34:26 35:-24 37:-15 39:-12 41:-12 42:22 43:-20 45:13 46:-19 47:17 51:11 53:10 54:-9 58:15 60:-8 61:-31 62:46 73:19 74:-24 76:-12 79:10 80:-13 81:24 83:10 84:-10 86:12 88:-17 89:-8 93:22 94:-9 97:12 98:26 100:-12 102:-10 104:8 105:-10 107:-12 108:35 109:-11 112:-8 113:13 114:-9 115:-9 116:-15 117:11 120:14 123:-35
plan on	29:27
-	0:26 2:40 5:13 6:-15 8:-21 9:23 10:-8 11:35 13:10 16:26 18:14 21:12 22:-11 24:30 25:-10 26:-9 27:20 28:-21 29:11 30:-11 31:-10 32:-10 34:26 35:-24 37:-15 39:-12 41:-12 42:22 43:-20 45:13 46:-19 47:17 51:11 53:10 54:-9 58:15 60:-8 61:-31 62:46 73:19 74:-24 76:-12 79:10 80:-13 81:24 83:10 84:-10 86:12 88:-17 89:-8 93:22 94:-9 97:12 98:26 100:-12 102:-10 104:8 105:-10 107:-12 108:35 109:-11 112:-8 113:13 114:-9 115:-9 116:-15 117:11 120:14 123:-35
the _ -	0:-12 1:-8 5:20 6:-10 11:-8 13:18 15:19 16:-25 17:14 18:12 24:9 27:-9 29:34 33:27 35:-9 37:-8 41:-8 42:-10 47:26 64:14 69:12 70:-15 79:12 80:-8 82:15 83:-8 86:22 88:-11 93:9 98:16 103:-11 106:20 113:13 123:-10
the _ sander	2:9 100:-8 101:24 105:34
schedul of	16:18
@person from	109:18
the _ @person	12:15 26:8 61:9 62:14
the plan	11:15 29:18 36:-9 82:80
agenda for	29:46
agenda _ @person	29:19
tomorrow in	109:13
my agenda	29:24
agenda _ the	29:20
is _ plan	29:37
is our	5:22
schedul for	16:12 29:84 100:-10 104:-9
is _ schedul	31:10
is schedul	29:16
me _ week	29:19
week by	29:13
^ this	1:11 3:-9 42:15 53:11
show _ week	29:10
me next	29:9
next _ by	29:8
on @person	29:8
peopl of	14:12 28:-8
week on	109:15
^ week	29:29
week plan	29:16
week for	29:8 100:11
of machin	99:12
do next	29:14
could _ do	15:54 30:9 63:-11 123:-17
begin==	11:-13 29:31 106:68 107:-10 113:17
begin	11:-14 13:-8 28:-15 29:47 49:21 53:-20 86:18 100:8 106:67 107:-12 110:43 113:16 116:-10
begin with	11:-10 29:26 106:16
start==	11:-13 20:15 27:8 29:75 33:-9 42:-10 106:50 108:10 110:24 113:18 123:-12
start	4:-13 11:-16 13:-21 15:-29 16:-9 17:-10 20:15 29:72 33:34 42:20 43:-8 47:-9 51:19 57:24 63:-14 64:-9 71:-10 86:20 88:-10 106:178 107:-16 108:8 110:37 113:13 114:-8 123:-12
we start	20:17 29:9 106:13
start with	20:17 29:10 106:28
should _ start	29:9
we work	29:8
on with	106:61
next up	11:30
up for	37:18 64:32 69:14 98:8
job _ next	112:16 114:9
next _ sander	105:15
what next	29:19
what now	17:-8 25:-9 29:81
need doing	29:10
doing next	29:21
what _ doing	29:11 112:20
doing $	112:20
want to	3:10 4:13 16:9 68:15 109:-10 122:10
want _ be	68:15 109:-8 123:9
be _ next	29:31 109:-8 123:30
need _ now	102:24
@person start	106:9 110:17
shall _ start	29:31 106:-10
@person do	15:53 33:10 63:-11 123:-17
for me	0:-18 3:32 20:17 23:-12 29:18 34:11 56:18 69:-10 80:18 104:30 123:17
next _ me	29:11
me $	12:10 13:-11 28:21 34:27 36:10 56:17 57:9 63:31 69:-10 88:28 104:-8 109:37 123:17
why it	90:12
it now	105:17
why _ now	29:9
i am	2:-9 6:11 9:25 11:-9 17:-18 32:14 33:-8 41:-14 42:19 50:16 51:16 59:10 63:12 64:18 81:-9 86:-9 88:12 96:-9 106:73 107:17 109:42 110:32 112:13 123:46
am free	29:14
i _ free	29:14
noth==ing	3:-15 5:13 11:-10 13:10 16:-8 22:-11 29:21 33:-8 43:-11 44:23 56:19 67:10 76:12 83:10 86:67 89:22 90:73 92:43 114:-11 116:13 123:21
noth	3:-15 5:13 11:-10 13:10 16:-8 22:-11 29:21 33:-8 43:-11 44:23 56:19 67:10 76:12 83:10 86:67 89:22 90:73 92:43 114:-11 116:13 123:21
have noth	13:22
noth to	29:30
noth _ do	29:30
free what	23:-34 83:50
me work	29:16
work to	29:10
give _ work	29:16
me _ to	29:13 104:10 122:34
work _ do	29:10
me someth	0:14
someth to	33:11
i go	16:12 82:11
go on	29:11 33:-10 44:13 82:10 106:13 107:25
on $	13:20 20:8 28:-16 29:27 32:25 40:-18 51:29 54:40 62:27 98:10 102:18 106:-8 107:-8 109:-13 110:33 119:16 120:9 123:39
i start	27:9 29:43 106:-11 110:9
start $	29:16 106:45 113:11
do _ start	113:9
what am	29:22
we at	29:11
are _ at	11:-9 12:8 29:11 54:11 73:10
at $	13:22 14:68 15:-8 17:-9 25:-15 32:8
i _ now	17:42 29:-9 106:15
am _ up	51:21 64:26 110:-10
)~"
R"~(to $	1:25 5:-10 9:-8 10:13 15:29 17:9 18:24 33:-13
do _ from	29:8
have on	0:-11 4:18 11:14 29:19 54:20
have for	29:15
have _ #o	114:17
got to	12:15 43:48 123:20
got on	12:30
rest==	17:-8 44:16 63:9 69:16 91:13 107:8 116:82 117:51 118:77 123:-20
rest	17:-8 44:16 63:9 69:16 91:13 107:8 116:82 117:51 118:77 123:-20
rest of	37:8 52:9 109:13 117:36 118:13
we _ what	74:8
got _ is	8:-10 23:21
rest _ the	37:9 116:11 117:8
of _ week	30:23 52:25 109:28
have _ in	8:9 13:22 80:11 90:10 122:10
on _ from	51:14 53:-9 109:10 110:9
got _ on	60:11 64:11
got _ in	14:26 25:-8
on _ until	53:17
will @person	28:35 109:-10 123:-16
the rest	44:16 69:16 91:14 109:12 116:12 117:21 118:51 123:-9
will _ have	102:10
for _ is	68:16 72:20
have _ this	29:15
in @day	14:-9 28:24 108:11 109:20 110:9
doing _ this	15:-8 29:22
@person doing	29:13
doing on	29:13
is _ doing	29:13
are _ doing	47:22
we _ @day	30:11
on for	9:-12 27:16 28:-12 29:16 31:23
what _ plan	29:40 82:19
plan _ for	82:62
is plan	29:37 82:25 83:-16
schedul==ed	29:12 31:10
on _ to	29:12 51:8 108:9
plan at	5:22 29:-14 103:19
on at	12:17 114:8
belt _ on	100:14
are _ @person	28:15 108:-8
for bench	6:29
bench _ from	29:9
of _ -	34:13 70:23
left _ do	13:43 27:-20
done from	54:20
be _ from	5:32 52:14 54:15 56:19 59:14 100:13 103:18 121:15
done _ tomorrow	11:23
what _ at	13:14 29:8
at _ @day	29:8
sander #r	105:10
bench _ @day	104:12 105:28
at _ #o	17:9 35:12 42:-8 45:15 71:-8 75:44
sander _ of	100:8 105:12
@job go	11:13 29:8 33:10
go under	11:14
go _ sander	29:11
be in	53:19 97:15 108:9 109:23 110:-15 121:10
in press	85:12
@job _ in	15:16 29:13 88:14
be _ press	100:11
day will	29:10
what _ will	29:8
job _ go	83:9
#n _ in	0:-8 13:18 34:16 35:10 39:32 41:-11 46:17 49:10 74:56 77:-8 78:19 116:19 123:-11
will _ work	110:11
to job	53:-9 104:9
do _ get	19:-11 32:38
to @job	52:11
@job begin	86:17
@job start	86:26 106:-12
job _ plan	29:14
busy==	25:-26 29:81 110:10
busy	25:-26 29:81 110:10
come on	110:10 116:18 117:19
sander from	98:16 100:9
sander _ the	26:-9 29:12 104:8 105:29
@person free	29:32
free _ from	29:9
free on	29:32 110:-8
#r _ #o	109:13
free _ on	29:32
next _ from	51:-14 53:22
of this	33:15 52:11 109:29
rest _ this	52:9 109:13
@day -	51:-12 108:19
december at	16:-9 114:15
at tomorrow	104:9
tomorrow at	26:17 42:9 43:20 72:-8 95:8 100:21 101:11 107:15 114:48 116:18
of _ at	8:9 16:-10 49:27 77:13 114:14
at _ at	52:11 83:12 95:11 104:14
tomorrow _ #n	26:18 42:10 43:21 72:-8 95:8 100:20 101:11 107:18 110:17 114:23 116:18 123:-8
on _ at	17:27 29:23 44:-17 46:16 104:12 114:26
free at	29:19
at this	29:8 40:-9 70:-8 76:19 95:11 96:9 110:18
@person _ at	60:43 110:12
at _ morn	29:8 40:-9 52:19 70:-8 76:19 95:11 96:9 110:18
at @day	95:11 114:9
@day at	11:11 29:17 43:12 51:-20 53:10 70:19 77:-8 81:-8 94:21 95:17 96:16 101:11 106:12 107:17 110:15 111:14 114:19 123:-10
yesterday	0:-13 1:-11 2:-9 3:-11 11:-9 13:-11 16:-17 17:-14 25:-10 33:13 35:18 36:-11 37:-9 38:15 39:39 40:-13 42:49 43:42 44:12 47:-10 49:11 63:-9 65:17 69:-8 70:12 72:15 73:8 74:-9 75:-10 76:11 77:17 86:-8 88:-15 89:-8 90:-13 94:17 95:9 96:45 100:30 106:28 107:-12 110:32 112:-9 114:56 115:13 116:19 118:8
at yesterday	35:8 72:8 96:10 101:10 114:8
yesterday $	0:-10 11:-8 13:-9 17:-11 33:21 38:10 39:9 42:33 43:20 44:23 76:16 88:-11 90:-9 96:41 100:24 101:-17 106:27 107:-9 110:10 112:-8 114:51 116:14 123:9
free the	37:20 83:13
#o at	3:22 96:11
#o _ yesterday	96:11 110:9
on _ this	9:13 44:15 110:13
ther time	30:17
time on	105:10
is _ time	27:10 29:9 30:16
ther _ on	8:14
some time	114:-16 123:28
time at	32:11
room==	29:10
room	29:10
room _ belt	29:8
at _ on	0:11 109:9 110:27
#o _ #o	4:10
can @person	29:11
@person get	33:11
#t	1:-8 2:-10 11:-17 13:-10 16:-13 17:-9 25:-12 26:-20 28:-35 33:-8 40:-9 42:9 43:32 46:-9 51:79 53:98 54:-12 55:18 62:-8 63:-8 69:-10 70:9 74:-26 82:10 88:-11 90:-8 94:19 96:18 98:-8 100:55 101:9 102:-9 104:77 107:29 108:13 109:-17 110:72 111:-8 114:65 116:17 117:-9 123:-19
at #t	28:-10 29:15 35:8 40:-8 42:14 43:36 44:18 51:16 52:16 70:11 82:11 88:-9 94:22 95:10 96:19 100:11 101:12 107:33 114:18 116:20 123:-8
can _ get	2:10 5:12 6:10 9:12 29:14 30:-8 32:24
get _ on	11:-8 28:-8 29:39 33:11
at _ #t	35:10 82:14 96:9 104:19
#t $	11:-8 25:-8 26:-10 28:-14 29:11 42:16 43:29 44:12 51:12 52:11 53:33 70:12 74:-15 88:-9 94:10 95:10 96:10 100:10 101:12 104:35 106:13 108:15 109:-9 110:11 114:61 116:20 123:-10
we _ sander	104:9
have _ at	107:10
#r _ this	110:8
#n hour	4:-8 28:-13 35:-15 36:16 42:42 43:9 44:-15 51:-8 53:18 54:16 67:9 69:-9 77:-8 83:22 95:10 98:-8 100:20 103:89 104:16 114:16
ago	3:-9 16:-10 35:-15 37:19 42:35 43:28 44:24 49:14 67:9 69:12 71:-15 74:15 77:-9 79:-8 83:22 88:-8 94:22 95:17 96:16 98:-13 100:11 101:34 103:-20 107:37 110:8 114:11 123:-14
hour ago	3:-8 35:-9 37:21 42:23 43:20 49:15 67:9 69:15 71:-9 77:-9 83:22 94:27 96:10 100:12 101:14 103:-9 110:9 114:21 123:-8
december _ #n	16:-10 52:13 53:12 100:9 104:14 109:31 114:11
at _ hour	11:-10 28:9 35:-12 36:11 54:10 67:10 83:25 103:19 110:13 114:-13
#n _ ago	3:-8 29:8 35:-18 42:37 43:20 44:18 67:9 71:-12 74:18 77:-8 79:-8 83:23 95:21 96:11 98:-12 100:12 101:23 103:-14 107:39 110:9 114:13 123:-10
ago $	16:-9 37:20 38:8 42:9 43:27 44:13 69:12 74:-8 94:18 95:12 96:24 98:-12 101:35 103:-16 106:11 107:39 114:21 123:-11
sander _ #n	26:10 53:-8 97:-9 98:25 100:24 101:29 104:23 123:-9
get _ at	32:11 44:11 88:-10
press from	99:19 102:15 104:27
have _ on	12:16 62:10
get _ from	5:14 32:8
has time	29:12 46:25 64:34
who _ time	29:14 64:17
time for	11:20 27:81 54:-8 103:20
has _ for	61:13
time _ @day	28:15
full==	0:17 8:33 11:-8 16:14 21:-10 33:30 78:-13 82:13 83:-9 90:16 103:18 108:29 116:10 123:15
full	0:17 8:33 11:-8 16:14 21:-10 33:30 78:-13 82:13 83:-9 90:16 103:18 108:29 116:10 123:15
how full	8:26 21:-9
full is	8:26 21:-9
shop this	53:10
full _ the	8:26 21:-9
the _ this	18:10 21:11 53:10 73:-10 86:8
how busy	25:-23 29:60
we in	8:10
the com	26:19 28:11 29:8
com week	26:9 28:11 29:8
in _ com	11:8 26:10 28:11
load==ed	74:12
is _ this	11:-13 17:15 29:34 43:10 44:-8 96:9 104:21 114:18
are @person	28:9
busy am	29:16
busy _ i	29:16
i $	29:15 31:11
busiest==	29:14 121:27
busiest	29:14 121:27
busiest $	29:8
which machin	11:-9 26:44 29:28
machin hold	29:44
hold us	29:14
us up	29:14
hold _ up	17:8 29:56
bottleneck==	29:58
bottleneck	29:58
the bottleneck	29:39
is _ bottleneck	29:32
bottleneck $	29:58
our bottleneck	29:14
wher is	17:11 20:17 29:16
which _ the	17:44 22:16 29:12 119:17
what hold	90:11
hold everyth	29:42 82:43
everyth up	29:43
the machin	26:11 58:13 60:-8 98:19 99:36 102:-9
machin load	29:10
load of	16:10 29:14
machin _ of	29:8
for _ com	26:9
machine load	29:11
bench of	78:17
machin _ for	26:23 99:12
work _ we	29:13 108:23
work do	29:9
have _ belt	99:11
ther at	33:14
slack==	29:54
slack	29:54
slack for	29:9
the slack	29:33
leeway==	29:26
leeway	29:26
leeway $	29:10
the leeway	29:14
slack _ job	29:11
is _ slack	29:10
is _ leeway	29:8
much slack	29:16
how _ slack	29:16
much time	27:-13 29:34
time to	22:16
how _ time	27:-13 29:34
to _ have	44:10 80:10
have _ job	12:15
time has	29:24
has _ left	118:10
#n got	0:-20 35:24 42:17 69:-11 76:19 81:14 94:12
job _ got	0:-19 35:25 76:15 94:13
@job got	43:19 93:58
time _ the	27:28 28:25 53:10 98:11 103:-8 105:9
time doe	28:26
time _ job	11:22
time _ we	29:12
time do	29:8
deadline $	29:13
deadline of	29:10
start==ed	13:-8 15:-25 33:44 42:41 57:10 71:-9 106:51
when may	29:12
@job _ start	106:31 113:11
be cut	4:13 5:23
@job _ cut	6:-8 42:13 70:40 106:20 107:-9
begun==	13:20 29:11 42:-8 106:63
begun	13:20 29:11 42:-8 106:63
be begun	29:13
begun at	13:29
may the	3:16
start on	106:26 123:14
start _ job	29:17 106:11 123:14
to begin	11:-10 29:22
have _ begin	11:-10 29:22
to _ with	11:-10 28:8 29:22 80:13 84:10 85:13
begin _ job	29:15
start the	4:-9 27:9 106:22
have _ start	123:14
must _ begin	113:11
begin _ at	110:15
tightest==	29:15
tightest	29:15
is tightest	29:12
tightest $	29:15
urgent==	13:32 15:-8 17:-10 64:-8 112:154 113:-9
urgent	13:32 15:-8 17:-10 64:-8 112:154 113:-9
is urgent	112:47
)~"
R"~(urgent $	13:35 17:-10 112:104
job _ urgent	13:42 17:-9 29:-9 112:37
is _ urgent	112:44
begin==ning	29:16 49:22 116:-9
latest begin	29:16
begin of	29:16
the _ begin	29:13 86:9
latest _ of	29:25
begin _ @job	11:-9 29:27 113:14
latest start	29:26
start of	29:9
the _ start	29:23 108:10
finish==ed	0:41 2:-8 5:-8 9:-9 11:10 13:-15 16:-12 31:23 38:-10 42:171 43:70 47:-11 63:-12 100:-8 101:10 106:-17 107:35 112:-10 113:32 123:14
when would	28:11 30:10
finish	0:40 2:-8 5:-8 9:-9 11:10 13:-15 16:-12 30:14 31:23 38:-10 42:171 43:70 47:-11 63:-12 100:-8 101:10 106:-17 107:34 112:-10 113:32 123:13
be finish	11:19 29:11
would _ be	0:9 1:8 16:19 28:12 29:-8 35:-8
@job _ finish	29:21 43:10 113:39
finish _ the	11:21 29:-9
#n ready	29:9
ready by	46:12
#n _ by	3:-10 30:26 41:16 46:-9 87:11 88:32 123:22
@job _ done	13:-8 42:-8 43:28 44:17 63:14 113:24
@job ready	13:28
the _ ready	13:28
@job _ by	29:17 41:8
which _ will	15:8
#n _ ready	30:44 123:-21
@job _ ready	29:13
will _ late	117:8
late $	11:32 12:-17 29:39 31:19
@job in	0:-12 45:9 71:19
in time	29:32
@job _ time	46:16 105:35
job _ in	46:38 71:15
#n _ time	46:9
be late	12:-15 29:33 117:8
be _ time	29:16
be on	4:18 8:14 27:-9 44:-9 97:19 114:13
run behind	11:17
behind $	29:10
we late	11:29
are _ late	11:29 53:9
danger==	52:11
danger	52:11
keep==	0:-11 1:-14 2:9 3:18 5:-9 14:8 16:-10 23:23 29:11 30:10 32:36 34:-10 35:-22 36:79 37:-21 39:8 50:-15 51:22 69:-13 82:56 83:-8 104:18 105:-19 110:-11 118:11 123:90
promis==e	2:40 6:-11 11:-16 12:13 13:8 16:-12 17:8 23:-10 30:104 33:23 34:43 46:82 107:-8 123:-9
keep all	21:12 29:21 82:8
do _ keep	29:10
we _ all	29:21 52:11
all promise	29:12
will _ keep	29:15
keep _ promise	29:15
promise $	29:18
all our	8:42 9:-12
finish $	29:22 30:9 42:41 43:9 101:11 107:25 113:34
are all	2:8 17:17 25:22 27:19 42:10 52:11 111:-8
when _ all	29:8
the _ finish	31:17
doe what	29:47 33:-16
what on	33:11
who _ what	29:57 33:10
what $	0:-10 5:28 8:-19 9:-8 10:9 11:37 19:48 22:19 26:20 28:-9 29:9 32:-8 33:-16
on what	27:14 28:-9 29:17
is doing	15:33 29:15 106:12
doing what	15:-9 29:24
who _ doing	15:33 29:15
is _ what	15:-12 26:28 28:-14 29:33
what for	5:26 8:21 12:14 20:-9
what _ #o	16:20
^ promis	11:-10 46:94
refret by	30:17
kind $	8:23
glu==ed	13:-10 30:37 88:-8 94:-9 95:233 96:-9 99:-8 106:-8 119:13 123:23
glu	13:-10 30:37 88:-8 94:-9 95:233 96:-9 99:-8 106:-8 119:13 123:23
promis _ refret	30:12
of _ kind	8:23
refret _ this	30:9
another==	0:-11 29:-8 30:48 38:44 47:25 48:-10 78:18 87:10 92:22 114:9 123:-10
when can	30:12
we promis	11:14 30:23
another	0:-11 29:-8 30:48 38:44 47:25 48:-10 78:18 87:10 92:22 114:9 123:-10
promis another	30:12
can _ promis	30:49
shop promis	30:12
can _ shop	30:9
new _ with	27:13
day could	30:18
could you	0:19 13:28 73:-8 123:32
one more	30:9
could _ promis	30:18
glue==	56:12 71:-9 86:96 88:-13 90:45 94:-10 95:69 96:-8 123:43
day can	30:14
promis a	2:21 12:17
job with	9:15 30:19
glue	56:12 71:-9 86:96 88:-13 90:45 94:-10 95:69 96:-8 123:43
with glue	95:19
when could	30:51
a new	2:-8 30:25 34:9 40:-9 48:12 57:25 58:13 77:30 84:28 119:29 123:57
new job	3:-13 13:-8 30:11 34:16 45:106 123:11
job _ fil	30:11
day would	30:10
would we	19:20 29:11
i finish	107:12
have _ more	121:13
shop have	25:44
more job	30:18
one _ job	74:11 81:17
more _ with	55:8 121:39
in a	22:25 32:10 34:15 49:-10 54:10 78:9 87:-8 95:9 112:35 115:11 116:12 119:10
shop _ in	54:27
take _ a	34:17
refret of	8:-11 9:14 30:16
new _ of	48:8 119:12
of _ fret	0:17 2:15 30:23 40:11 42:8 78:9
how soon	9:19
new whol	30:18
with #n	1:13 3:13 13:16 27:13 38:-9 49:16 81:18 92:9 103:13 119:10 123:-10
how _ would	27:15
soon _ i	82:12
do _ more	30:12
new _ job	30:15 45:8 84:-8
@person _ a	26:19 58:13 60:11 67:9 97:-8
@person take	16:9 30:35 63:57 64:-10 123:-11
take a	1:9 103:9
job done	30:10
day _ @person	28:18 30:8
could @person	15:54 30:23 63:-11 123:-17
whol _ of	67:11
#n _ finish	0:18 42:15 43:8
would @person	28:12 29:-8
another job	30:11
on _ job	2:9 88:-14 90:10 94:18 95:17 96:-8 106:52
by _ can	9:-8 32:31
have _ new	84:12 97:23
fret with	30:10
another _ of	78:18 115:8
fret _ fil	42:24
fret be	2:10
more _ of	49:12 121:13
#n _ be	16:13 36:9 44:-9 64:15 100:12 101:14 105:37 112:11 114:11 117:33 123:-16
refret be	30:18
the _ glu	95:10
more refret	9:11 30:19
a bound	27:27
bound board	27:26
a _ board	27:35
new board	27:37 30:61 57:-9
by _ would	29:11
would _ refret	30:11
would another	30:11
another new	30:9
when _ another	30:15
will _ job	43:-11 47:17 123:45
the _ new	5:24 30:11
board _ done	102:16
can you	1:-12 7:14 10:12 20:10 32:10 34:30 36:22 122:12
i promis	8:8 11:-12 13:12 30:59 46:19
promis on	30:8
promis _ the	11:-8 30:30 46:19
promis _ #r	30:8
@day for	30:10 46:14 115:12
another refret	30:25
we _ by	8:16 23:17
for _ new	30:18
refret for	30:10
new _ for	5:-8 7:15 46:13 70:-10 77:27 97:15 117:15
of #c	16:11 41:12 48:11 50:24 65:11 119:-15 120:25
glu in	95:20
fret in	0:-10 2:8 3:8 27:10 33:15 40:52 41:-10 71:-9 76:9 77:-9 78:15 90:-9 123:20
promis the	2:23 11:-8 27:12 30:-9 33:31 34:26 46:22
end for	38:12 106:10
the end	30:30 40:16 41:9 42:14 95:11 106:8 113:12
by _ end	30:26
end _ next	30:22
ready for	105:14
done this	44:-9 114:11
you do	34:34
you _ a	36:12
glu $	95:68
i _ another	30:11 78:11
refret _ @day	30:15
in _ new	34:17
with _ in	119:11
job in	45:9
glue in	86:14 90:33 95:8
a _ with	82:10 84:9
on _ more	30:24
have another	114:10
job be	29:9
#c _ be	59:15
is today	30:13
possibl==e	2:11 5:16 30:66
possibl	2:11 5:16 30:66
possibl $	5:17 30:44
is _ possibl	30:28
the _ possibl	30:8
feasibl==e	30:13
feasibl	30:13
today feasibl	30:12
is _ feasibl	30:12
the _ fil	30:8
realistic==	30:9
realistic	30:9
job for	102:10 103:27
ther _ for	10:14 30:20
whol _ for	72:-8 82:13 83:21
crown==s	19:48 30:8 39:13 72:9 80:11
#n crown	30:8
time _ #n	27:66
crown $	19:31 30:8 39:13 42:18 48:10 87:10 89:18
end on	38:13
if _ promis	30:24
promis _ @day	11:-14 46:32 117:13
if you	17:8
#o _ a	0:-8 52:10 88:21 91:11
happen==s	16:8 25:-8 82:11 102:24
happen	5:-9 8:-11 9:-8 11:-8 17:-9 20:8 25:-9 29:19 33:113 82:11 102:24 122:8
what happen	5:-9 8:-8 20:9 33:90 82:11
what _ if	30:16
tomorrow _ a	52:15
december for	30:13
promis _ #o	46:13
bound refret	30:8
shop _ the	19:8 28:24
refret befor	30:9
happen _ the	20:10 25:-8 33:16 102:24
fret _ @day	96:18
must have	90:11
to give	30:18
have _ give	30:18
for _ more	30:16
mov==ed	2:17 4:-11 44:25 74:120 79:-10 81:-13 88:-9 96:-17 114:-9 117:44 123:20
mov	2:17 4:-11 44:25 60:18 63:-14 74:120 79:-10 81:-13 88:-9 96:-17 114:-9 117:44 123:20
be mov	2:10 79:-10
will have	98:-13 114:15 123:41
with _ for	42:18
to have	11:18 30:17 54:20
job _ befor	113:22
would give	0:10 1:-10 15:11
to wait	30:13 113:41
have _ wait	113:25
to _ by	30:15
wait _ #r	30:13
would have	30:17
give by	30:9
would _ to	13:17 16:-8 19:9 26:8 27:8 30:20
has _ wait	30:8 113:17
have _ fil	102:10
would _ need	9:14
it need	41:17
soonest==	30:25
soonest	30:25
the soonest	30:20
day we	98:-13 123:34
can _ a	3:11
earliest==	12:16 21:9 30:121 57:-8
earliest	12:16 21:9 30:121 57:-8
the earliest	30:59
is _ earliest	30:22
possibl _ we	30:11
is first	112:9
date _ a	30:9
earliest day	30:42
is _ soonest	30:18
free day	109:10
^ earliest	30:27
earliest _ for	30:12
earliest new	30:19
earliest _ board	30:19
ready _ #r	46:8
done _ of	72:18
order @wire	9:25 31:-10 32:16 49:-8 50:41
order _ clos	31:15
on order	8:-13 29:-8 31:83 115:20 116:16
is _ order	8:-11 9:13 31:43
did _ order	31:59 116:-14
open order	1:22 12:10 31:44 118:18
the _ order	9:21 10:-9 115:8 118:31 120:20
is any	22:11 23:19
@wire on	1:-10 9:-9 18:13 31:34 49:-8 65:38 66:24 67:-9 68:19 115:11 117:15
@wire _ order	29:-8 31:11 49:-15 115:39 118:25
any @wire	1:-9 8:47 9:-24 22:27 23:45 31:26
i _ any	31:15
arriv==e	9:-13 14:19 19:34 29:-11 31:59 32:10 49:-15 56:25 116:-20 117:13
arriv	9:-16 14:17 19:21 29:-12 31:76 49:37 56:24 65:-22 66:-11 98:12 116:128 118:-8 123:-12
@wire arriv	9:-11 19:30 31:20 49:31 65:-9 66:-9 115:-8 116:16
will _ the	35:47 63:43 93:-14 104:9 121:24
the _ arriv	9:-9 19:29 31:15 49:13 66:-8 116:14
)~"
R"~(arriv $	9:-14 19:32 29:-11 31:67 32:9 49:17 65:-10 116:47 123:-9
@wire come	9:-13 19:20 31:47 32:14 33:-9 65:15 67:11 87:25 123:-9
the _ come	9:-10 19:20 20:-12 22:9 25:29 29:-9 31:54 32:9 33:-8 55:8 72:18 74:-8 117:-9 123:-8
@wire due	11:-14 31:18 117:14
@wire _ on	8:-9 9:-13 31:39 38:11 66:25 115:9 117:10
list order	31:10
order for	13:19 31:12 118:23
order of	15:26 31:35 47:11 117:-10 119:9
will order	31:8
order come	31:20 117:10
when _ order	31:8
will _ come	49:-11 92:11 109:17 116:11 118:51 123:-26
order arriv	31:35
which order	27:21 31:25
order are	31:24
order _ late	117:10
all _ order	5:14 12:17 31:16
all order	31:9
to come	0:10 27:-9 31:17 32:17 71:11 94:11 112:13 117:8
still _ come	31:18
has _ order	15:27
arriv==ed	19:-13 31:18 49:59 65:-15 66:-10 98:13 115:-10 116:149 117:-15 123:-8
arriv yet	31:17
has _ come	31:13 112:13
have our	114:17
our order	117:21 118:20
our _ arriv	31:8
has _ @wire	31:25
has _ the	14:13 26:9 62:10 75:11 82:11 116:-8 117:12
come yet	31:33
@wire _ yet	19:-9 31:35
delivery==	10:-9 13:-10 19:37 28:-10 29:-17 30:16 31:48 49:18 65:-12 72:125 116:52 117:10 119:9
when come	31:14
come the	31:14 90:10
next delivery	28:-8 29:-13 31:39
come _ next	31:14
the _ delivery	19:13 28:-8 29:-14 30:9 31:38
doe _ next	31:14
next _ come	31:8
order overdu	31:16
are _ order	31:21 115:9
are an	31:22
an order	31:25 49:-8 115:25 116:-10 119:14
order late	31:15
an _ late	31:13
an _ overdu	31:14
are order	49:-9 115:18
are clos	31:11 52:25 111:-8
which _ were	17:-17 33:73
supplier==s	8:-8 10:14 11:-8 14:-10 32:161 34:-9 99:-10 119:35 120:-15 121:43 123:-20
supplier==	8:-12 9:19 11:-8 19:11 20:-8 23:-8 29:-10 32:29 33:-10 48:-29 49:10 54:-11 56:-11 57:-15 65:-8 97:-17 119:169 120:93 121:149 123:-8
supplier	6:-8 8:-19 9:13 10:19 11:-16 12:-10 14:-15 19:8 20:-10 22:-8 23:-12 25:-10 28:-9 29:-16 31:-9 32:190 33:-13 34:-16 48:-30 49:9 54:-14 56:-14 57:-16 65:-8 85:-8 97:-18 99:-17 119:204 120:78 121:193 123:-27
^ supplier	8:-8 32:50 120:90 121:-17
supplier supplier	32:12
supplier ~	32:10 48:-24 54:-8 56:-8 57:-10 97:-9 119:25 120:104 121:43
~ supplier	32:28 48:-19 119:-13 120:31 121:-25
supplier _ ~	32:14 119:15 120:-19
supplier _ supplier	32:28 48:-12 120:11 121:-19
who are	14:14 28:-21 31:24 32:14
our supplier	32:29 119:9
who _ our	32:10
are _ supplier	32:15
supplier $	32:79 119:23 121:74 123:-18
the supplier	9:24 32:32 99:-11 117:12 119:32 121:97 123:-18
deliver==s	32:19 117:33 119:-8 120:21
deliver	9:-10 19:20 27:-8 32:30 33:-9 49:12 66:-9 116:49 117:38 120:27 123:8
who deliver	32:23
deliver the	32:13 118:13
deliver _ @wire	32:13 118:13
supply==es	32:15
who supply	32:15
sell==s	32:41 120:47
sell	32:60 119:17 120:44
who sell	32:41 119:10
sell _ @wire	32:41
ship==s	32:17 117:26 120:11
ship	32:21 117:26 120:11
who ship	32:18
ship the	32:8 117:9
who _ @wire	32:26
who do	10:8 32:44
get @wire	32:19
who _ we	9:-8 28:-12 31:23 32:32
buy @wire	32:11
buy _ from	32:13 121:10
who did	32:9 33:10
who _ i	10:9 32:20
order _ from	32:18 50:18 121:-8 123:20
get the	6:8 19:21 32:16 33:-11 72:15 104:16 123:52
get _ @wire	5:-8 19:43 20:-9 32:13 38:12
whom==	9:-17 10:14 13:-9 15:35 19:37 23:47 26:8 31:-12 32:41 33:21
whom	9:-17 10:14 13:-9 15:35 19:37 23:47 26:8 31:-12 32:41 33:21
from whom	10:20 19:22 32:14
whom do	32:17
from _ do	32:17
whom _ we	19:13 32:12
whom _ i	15:8
@wire take	27:-13 32:25
take _ come	32:14
deliver==ed	19:21 49:13 66:-8 116:47 123:11
be deliver	117:10
deliver $	27:-8 32:13 123:17
to arriv	29:-8 31:10 32:11
take _ arriv	32:11
take until	27:-9 32:17
it _ until	27:-9 30:10 32:17
until _ @wire	32:8
until @wire	32:9
@wire _ here	1:11 49:9
arrive==s	116:-8 117:23
arrive	116:-8 117:23
@wire arrive	117:8
doe ~	27:-15 32:25
~ take	27:-14 32:19 120:28
long _ ~	27:-25 32:41
deliver==	32:8 118:13 120:10
~ need	27:-11 32:21 120:24
to deliver	32:9 120:11
~ _ to	27:-12 32:20
do ~	27:-10 32:17
wire from	0:10 10:-8 32:13 72:19 120:11 121:10
order from	12:18 31:-10 115:-9 118:27 119:57 120:-10 121:47 123:-11
we _ from	118:32 119:40 120:8 121:-12
show _ supplier	32:20
list our	31:13 32:19
list _ supplier	10:19 32:36 121:-10
lead==	27:-14 29:-11 32:44 57:49 60:43 119:8 120:57
lead	27:-15 29:-12 32:43 57:65 60:87 61:-9 120:56
the lead	32:38 60:13 120:12
lead time	27:-13 29:-9 30:8 32:47 119:18 120:22
time from	28:15 32:11
from ~	48:-22 49:20 55:-14 115:48 116:43 118:-8 119:46 120:34 121:50 123:-12
is _ lead	32:39
the _ time	11:20 27:8 28:14 29:-10 30:-8 32:37 51:-10 53:11 108:9
lead _ from	32:12
time _ ~	32:37 120:14
lead _ at	32:11
time of	32:24 98:12 108:11 120:8
lead _ of	32:24 120:8
what supplier	32:34
supplier are	32:29
supplier _ ther	32:29
which supplier	10:12 32:37
supplier have	32:21
supplier _ we	32:43
supplier do	32:22
term==s	32:62 62:10
term	32:62 62:10
the term	32:62
term of	32:51 120:8
term _ ~	32:51
are _ term	32:29
history==	0:-16 19:14 33:194
happen==ed	8:-8 20:9 29:-10 33:120 122:8
history	0:-16 19:14 33:194
^ history	33:112
history _ the	33:11
@person _ @job	63:31
today _ ~	52:10 109:12
number _ slot	35:-10
@job piec	33:12 36:8
@person _ #n	33:13
number _ job	35:8
slot _ piec	1:9
#d _ @job	3:-10 35:17 40:-9 77:19
#o piec	35:-8
history _ slot	33:30
story==	20:-11 33:98
story	20:-11 33:98
the story	20:-10 33:71
story of	20:-11 33:98
story _ job	33:17
history of	33:60
#n the	4:-8 13:-18 16:-12 17:38 30:-11 38:-9 44:-17 46:27 49:14 73:79 75:9 78:14 90:19 92:63 94:21 112:-10 113:-9 115:13 116:-10 123:-14
#n tomorrow	29:14 33:10 114:29
job _ tomorrow	33:10 114:29
^ story	33:26
#n next	110:17 112:16 114:9 123:-8
story _ the	20:-10 33:35
the history	33:23
@job the	2:-11 5:12 17:13 44:-9 73:18 88:20 90:10 94:10
@job _ #o	0:17 88:21 90:10 94:10
of piece	74:-8 80:22 81:8
of _ #d	37:11 38:-8 39:-13 69:31 79:8 80:28 81:45 87:15 123:-8
story _ #d	33:15
of number	16:12 37:10 89:11
@wire #r	117:9
sinc the	21:25 33:26
sinc _ #o	21:25 33:26
story _ @person	33:11
@person sinc	33:12
of next	30:21 52:8 105:12 111:10
history for	33:8
of today	97:25
did _ #n	1:-12 33:36
#n _ through	20:17 118:19
through $	27:28 33:20 51:34 52:-11 74:-9 76:30 80:27 88:-9 111:35
@job been	15:27
@job _ through	33:16 107:14
gone==	20:16 29:-8 39:8 41:11 56:21 61:58 62:-17 76:29 77:-8 80:10 85:19 99:37 105:10 109:22 110:-10 121:38
gone	20:16 29:-8 39:8 41:11 56:21 61:58 62:-17 76:29 77:-8 80:10 85:19 99:37 105:10 109:22 110:-10 121:38
the _ gone	20:9 99:46
happen on	16:12 29:31
happen _ job	16:12
happen to	20:10 33:23 82:11
#n @day	44:-12 70:9 94:12 107:14 114:31
job _ @day	44:-11 70:9 107:14 114:32
@job sinc	44:14
happen with	33:11
@job #o	0:36 3:-9 35:18 44:31 77:16
what _ with	33:37
the _ #o	0:11 3:-8 77:17
@job _ of	16:-8 17:30 35:12 69:12 88:21 89:16 90:13 93:10
@job tomorrow	33:11
to _ tomorrow	29:30
was done	33:26
#n today	104:12
done with	11:15 17:13 42:42 61:9 102:40 106:-8 107:-9 113:20 123:-11
was _ with	96:14
done to	13:24 33:19
to fret	88:13 95:14
was _ to	33:10 38:-12 84:8 91:9 95:14 101:13 123:9
with _ slot	18:32
to _ slot	0:17 74:10
load has	33:27
has _ slot	33:16
got _ job	15:11
load==s	33:22 54:14 72:10
#n get	0:-8 35:22 36:-8
has slot	73:34
slot _ get	35:21 36:-8
the _ get	5:17 9:14 28:-9 29:21 100:10 123:32
got in	0:18 8:41
and _ got	69:-8 81:15
with number	39:12 58:8 63:21 69:26 96:-10 100:9
done _ number	13:24
to number	13:25
to #n	0:-19 1:-16 2:11 3:-9 4:69 13:-12 16:57 17:14 27:-9 28:-16 30:-10 35:-16 36:12 37:-16 39:-12 40:-8 41:-14 43:14 44:-9 46:-10 51:48 52:26 53:64 54:35 60:-8 63:-14 64:-15 66:-11 68:9 69:12 70:22 71:9 72:-10 74:35 76:-8 77:-13 81:-27 82:9 84:-11 88:45 89:-9 90:-11 91:-17 92:13 94:-19 96:-14 98:-9 103:33 104:45 108:51 109:21 110:10 111:-8 113:-12 114:-12 116:-10
to #d	2:-9 40:25 45:29 65:13 67:17 68:52 73:-12 84:-10 86:16 91:-9
with #d	43:16 67:13
to _ @wire	9:13 20:10
with _ @wire	7:16 9:15 33:14 49:18
had==	5:-13 19:25 33:10 34:13 43:8 44:39 68:24 71:56 76:14 107:31 111:12 123:-11
had	5:-13 19:25 33:10 34:13 43:8 44:39 68:24 71:56 76:14 107:31 111:12 123:-11
who had	33:12 62:9
had #d	33:12
who took	15:40
took #d	33:13
took _ of	0:9 33:13 80:-16 81:43
)~"
R"~(who used	15:-8 33:43
used number	33:10
used #d	33:9 35:11
used _ of	81:12
who cut	33:33
cut _ slot	41:11 69:-8 70:23
seat==ed	24:10 42:58 74:-9 76:-14 94:126 106:-9
who seat	33:10
seat _ #r	94:12
seat _ the	94:12 102:19 107:11
measur==ed	0:-17 2:-10 3:-32 40:177 41:8 44:-8 48:-8 63:-9 70:-11 75:17 76:-10 78:24 79:100 80:-8 88:-13 91:39 94:-8 96:-10 116:16
measur the	40:-12 73:10 75:-9 79:8 84:10 91:14 123:8
measur _ slot	73:10
seat _ fret	42:13 94:8
who press	15:-13 16:-8 33:68 43:-9
who _ fret	33:12
made==	0:-10 2:17 4:-12 11:-8 13:9 17:-10 33:21 35:16 38:-13 40:-10 41:9 44:8 45:-10 46:-8 47:26 60:8 69:35 70:11 71:-8 74:-22 77:128 79:-15 81:35 84:10 90:-10 91:-15 93:9 122:34 123:-16
made	0:-10 2:17 4:-12 11:-8 13:9 17:-10 33:21 35:16 38:-13 40:-10 41:9 44:8 45:-10 46:-8 47:26 60:8 69:35 70:11 71:-8 74:-22 77:128 79:-15 81:35 84:10 90:-10 91:-15 93:9 122:34 123:-16
who made	33:9
made the	35:27 44:13 81:22
made _ fret	35:14 77:9 81:11
made fret	41:12 69:-13 70:27 77:-10 81:20
@job next	16:21 17:-10 112:25
made _ of	74:-10 77:21
@job _ @day	44:-9 46:20 96:9 114:16
#n #o	3:25 13:-20 29:46 35:26 113:10 123:-9
job _ #o	13:-20 29:48 35:26 123:-8
@job today	33:11
the _ today	117:10
work==ed	9:10 15:-9 28:-13 29:20 33:27
has _ do	64:9
has _ done	33:22
@person _ sinc	33:10
did $	33:16
did _ do	33:59
@person _ to	12:13 29:23 60:15 64:11 108:11 109:-12 123:8
@person _ with	53:-9 62:11 104:9 106:8
do tomorrow	29:28
have _ do	27:21 33:18
i done	29:-8 33:36
have _ done	11:-10 13:25 29:-10 33:32
i _ #r	109:16
i _ sinc	33:12
i _ last	33:18
do last	33:13
thing==	25:21 33:23 34:16 48:-10 54:9 56:16 81:10 84:10 87:10 88:16 95:-9 97:25 122:22
was the	25:28 33:35
thing	0:-8 5:-8 11:12 16:-8 25:20 28:-9 33:34 34:38 48:-10 54:8 56:16 57:18 81:9 83:11 84:10 87:10 88:15 95:-10 97:25 122:21 123:-8
last thing	33:24 122:23
was _ last	33:34 61:29 122:-12
the _ thing	25:21 33:24 34:17 54:10 97:28 122:15
thing $	33:9 122:8
entry==	33:9 59:16 122:59
entry	33:9 59:16 122:59
last entry	33:10 122:25
the _ entry	33:11
entry $	33:9 59:16 122:49
my history	33:24
history $	0:-11 33:65
all happen	33:29
happen sinc	33:10
what _ happen	29:31
what _ sinc	33:9
was _ the	42:13
did what	33:14 74:8
what sinc	33:10
did _ sinc	33:10
what _ @day	33:10
what today	29:42 33:-14
did _ today	5:10
did _ next	16:-20 43:21
help==	2:9 6:-27 16:-9 34:204
topic==	34:17
help	2:19 6:-27 16:-10 34:204
^ help	34:169
topic	34:17
help topic	34:9
topic ~	34:17
~ topic	34:8
help _ ~	34:50
topic _ topic	34:8
ask==	0:-8 13:13 34:66 39:14 120:11
ask	13:12 34:66 39:13 43:-8 48:9 87:-10 120:11 123:34
we ask	34:40
can _ ask	34:53
ask $	34:43
i ask	34:17
help on	34:41
help with	34:27
with ~	55:19 56:-8
setting==s	12:-10 14:-8 34:163 60:8
setting	12:-10 14:-8 34:163 60:8
all setting	34:36
setting $	34:115
the setting	34:56 60:8
show _ setting	34:26
are _ setting	34:32
^ use	1:-14 35:119 36:-13 81:67
use piec	1:-16 3:40 33:30 35:-33 37:-8 123:26
#d at	35:9 36:-9 67:9 75:18
yesterday piec	35:8
piec _ at	35:17 36:-12
#d _ yesterday	35:8
at _ piec	35:22 36:-9 69:-11
hour _ piec	36:12
#t piec	35:8
#t job	107:8
#d _ at	3:9 75:52 86:-9 91:8 123:9
#t _ the	35:9 100:24 104:10
@job _ at	3:-9 13:24 42:17 63:11 75:19 86:25 90:14 92:23 114:10
at _ job	4:21 13:-11 17:-8 24:18 72:8 96:10 106:43
and _ piec	35:17
#n _ this	96:16 114:13
^ take	0:-11 1:-11 11:-12 24:-9 35:37 36:-11 37:8 46:20 47:-10 49:15 52:-14 56:23 58:-16 59:56 62:21 64:75 70:-8 80:14 81:19 100:9 111:19 122:63 123:-14
take _ for	35:14 104:9
number _ in	1:41 16:12 35:11 105:10
^ used	0:-9 35:74 69:10 81:34
used _ in	35:10
used #n	35:9 81:9
@wire _ slot	18:8 36:11 73:-8 81:9
used _ on	81:8
take the	1:-8 16:8 35:69 37:11 56:14 64:14 69:9 81:16 99:12 108:10 120:11 123:-22
piece _ for	22:21
into==	1:-16 3:-14 4:-14 18:10 33:-8 35:80 36:-9 38:42 44:-9 49:35 69:15 70:-9 71:22 74:36 76:8 78:51 79:-10 80:-8 81:37 82:8 88:-10 96:-17 101:12 108:-9 123:-9
^ put	1:-10 3:-8 23:-13 33:-9 35:24 36:37 38:14 42:-8 48:8 54:17 57:10 63:38 66:8 78:10 82:59 83:-17 95:9 99:-8 101:22 104:15 106:-8 107:19 112:16 114:15 119:24 123:-10
into	1:-16 3:-14 4:-14 18:10 33:-8 35:80 36:-9 38:42 44:-9 49:35 69:15 70:-9 71:22 74:36 76:8 78:51 79:-10 80:-8 81:37 82:8 88:-10 96:-17 101:12 108:-9 123:-9
#d into	35:21 69:11
into slot	0:9 3:-12 35:59 69:-13 81:37
the _ into	35:27 38:8
into _ fret	69:19 96:-10
put _ into	35:8
into _ slot	35:10
put number	35:19 36:12 71:-8
@wire into	38:39 71:-11 81:24
of _ into	38:15 49:8 71:-10
#n into	35:41 69:-20 71:19 74:28 108:-9
into _ #n	0:11 3:-10 35:27 49:12 69:10 71:-8 78:9 81:27
@wire goe	35:10
goe into	35:16
of _ goe	35:10
@wire _ into	18:12 38:-10 69:18 78:25
goe _ slot	35:35
into _ #r	35:14
#n goe	35:24 39:21 63:20 92:29 112:8
#n _ into	4:-8 74:21 76:11 81:11 108:-9
goe in	4:26 35:17 38:15 39:24 66:-8 67:10
went==	0:-17 4:-11 8:-11 20:32 21:-24 29:-12 33:25 35:26 39:29 43:20 44:15 49:-8 65:15 74:18 79:9 80:-9 81:17 94:9 98:10 117:11
went	0:-17 4:-11 8:-11 20:32 21:-24 29:-12 33:25 35:26 39:29 43:20 44:15 49:-8 65:15 74:18 79:9 80:-9 81:17 94:9 98:10 117:11
#d went	35:15
went in	39:27
the _ went	28:10 43:23 98:11
#d _ in	0:21 3:14 8:-11 38:10 48:12 65:12 73:10 75:10 80:9 81:17 87:-13 95:-9
went _ slot	35:11 69:-15 81:38
went into	4:-10 74:11 81:19
#d _ into	1:-8 38:23 81:25
^ piece	22:20 35:10 39:22 74:-8 80:17 81:20
piece _ goe	35:11
^ hold	3:-8 13:-8 23:-15 35:-22 36:151 42:-9 70:-8 82:79 83:-21 88:45 89:-13 113:19
hold piec	1:-10 23:33 35:-20 37:27 39:-9 70:-8 123:38
ago at	83:19 114:-9
@wire at	5:11 38:-8 49:17 50:25 65:8 66:14
hold _ #n	1:-10 23:31 35:-23 36:22 37:37 39:-10 65:12 70:-8 90:10 123:32
hour _ at	83:19 114:-9
ago _ #n	83:19 114:-9
hold _ #d	123:22
hold #n	37:10 120:8
reserv==e	0:-11 3:-8 23:-9 35:-16 36:79 53:-9 82:66 83:16 104:31
^ reserv	0:-10 23:22 35:-13 36:64 82:58 83:-12 104:15
reserv _ #n	29:10
reserv #n	36:24
reserv _ for	36:43
^ keep	0:-9 1:-8 35:-18 36:61 37:-19 50:-15 82:31 104:14 105:-18 123:99
keep #d	36:22
keep _ of	36:13
reserv the	53:-9 83:27 104:24
hold _ for	23:-20 30:11 36:15 83:70 123:-11
keep _ for	36:23 69:-10
hold number	36:18
keep _ #n	17:-8 32:39 35:-13 36:43 90:10 105:-18 123:47
hold _ of	82:10
keep #n	39:12 90:11
let==	1:-14 11:-14 13:-9 28:9 29:-13 32:26 33:-16 37:84 42:-12 44:8 47:-8 51:11 52:-14 54:18 61:18 63:9 64:54 82:-16 83:78 103:22 107:-8 109:-19 110:-17 111:-14 113:38 123:76
let	1:-14 2:9 11:-14 13:-9 28:9 29:-13 32:26 33:-16 37:84 42:-12 44:8 47:-8 51:11 52:-14 54:18 61:18 63:9 64:54 82:-16 83:78 103:22 107:-8 109:-19 110:-17 111:-14 113:38 123:76
^ let	1:-10 11:-11 37:71 42:-8 51:-8 52:-10 54:8 62:12 63:13 64:34 82:-15 83:85 103:24 111:-11 113:39 123:23
let go	33:-9 37:70 44:12 83:17 123:17
go _ the	11:14 16:15 18:22 37:11 38:9 80:29
go #n	37:8
let _ #n	37:28 64:-9 113:41 123:-13
let _ #d	37:11
go of	37:32 83:20 123:21
let _ of	37:31 83:34 123:19
go _ #n	37:8 80:-9 81:14
go _ #d	37:8
go _ number	0:11 37:11
let number	37:15
let #d	37:11
let _ go	37:16 61:22 83:37 103:25
^ free	23:-46 29:-26 37:64 64:69 83:59 105:67
free number	37:29
free _ #n	29:13 37:48 123:12
free _ of	37:18 83:11 123:8
unhold==	37:115
unhold	37:115
^ unhold	37:115
unhold #n	37:75
unhold #d	37:30
not==	0:-16 1:-35 3:12 6:-12 8:-14 9:-21 10:-19 11:-17 13:-14 14:-9 15:-17 16:-22 17:-14 18:-9 19:-12 22:15 25:-11 26:-21 27:-23 28:-25 29:-31 30:-18 32:-29 33:-25 34:-14 36:-21 37:58 38:-18 40:-20 41:-9 42:-40 43:-19 44:-13 47:28 48:-8 50:17 51:-17 52:41 53:-10 56:33 58:-13 59:49 60:-13 61:29 62:-25 63:-44 64:13 65:-18 69:-9 72:-27 74:-11 76:17 77:-14 78:20 79:-11 81:-16 82:-12 84:-9 85:26 86:37 88:22 89:-10 90:51 91:-13 92:8 93:10 94:-20 95:-9 96:-14 98:-12 99:11 100:56 101:16 104:-20 105:38 106:-23 107:26 108:18 109:65 111:72 113:33 115:-20 117:-9 118:91 119:-12 121:52 122:8 123:175
not	0:-16 1:-35 3:12 6:-12 8:-14 9:-21 10:-19 11:-17 13:-14 14:-9 15:-17 16:-22 17:-14 18:-9 19:-12 22:15 25:-11 26:-21 27:-23 28:-25 29:-31 30:-18 32:-29 33:-25 34:-14 36:-21 37:58 38:-18 40:-20 41:-9 42:-40 43:-19 44:-13 47:28 48:-8 50:17 51:-17 52:41 53:-10 56:33 58:-13 59:49 60:-13 61:29 62:-25 63:-44 64:13 65:-18 69:-9 72:-27 74:-11 76:17 77:-14 78:20 79:-11 81:-16 82:-12 84:-9 85:26 86:37 88:22 89:-10 90:51 91:-13 92:8 93:10 94:-20 95:-9 96:-14 98:-12 99:11 100:56 101:16 104:-20 105:38 106:-23 107:26 108:18 109:65 111:72 113:33 115:-20 117:-9 118:91 119:-12 121:52 122:8 123:175
)~"
R"~(do not	1:-8 4:8 10:-9 22:18 23:-9 32:-16 36:-10 37:19 50:20 52:24 56:26 63:-27 68:-13 83:15 85:13 99:13 100:11 102:-12 109:29 112:-15 113:19 118:-9 121:39 123:83
not hold	18:11 36:-9 37:32 83:21 90:9 123:-21
@wire any	18:12
any more	23:-9 37:46 41:13 46:25 52:-9 56:13 59:19 61:35 64:10 83:25 85:13 86:22 99:30 105:12 108:17 109:-8 111:20 112:10 120:8 121:12 123:-50
more $	1:-9 22:-8 23:-8 28:-8 29:-9 30:8 31:-8 37:44 46:25 61:20 62:31 64:16 83:11 85:15 86:23 98:-10 99:33 100:-8 101:50 105:8 108:18 109:-13 113:14 120:8 121:11 123:-19
hold piece	37:8
not _ piece	37:8
piece _ any	37:13
#n _ more	37:26 64:23 68:17 83:15 86:8 92:18 123:-18
not _ #n	37:8 88:9 99:8 123:17
hold _ any	37:14
#d _ more	37:11 123:-8
not _ number	76:13
not _ the	41:10 47:-22 81:-11 85:9 88:-8 90:8 102:-10 105:10 108:10 112:-9 118:14 123:132
^ nobody	1:-11 15:-9 36:15 37:59 52:19 54:12 56:10 64:67 85:11 100:9 123:15
nobody need	37:36
nobody _ #d	37:38
nobody want	35:12 37:34 80:10
^ no	0:19 1:-11 4:-10 8:43 11:-11 13:-11 16:55 17:-8 18:-8 22:-9 23:-14 26:-11 28:-16 29:-13 30:-11 33:-11 35:-8 36:33 37:18 39:-11 42:-10 46:14 51:23 52:36 53:-11 56:34 61:24 64:-12 69:-13 74:-8 82:-12 83:24 86:16 88:18 89:15 90:22 92:24 95:-8 96:-9 98:-15 100:76 101:-8 104:-14 105:-14 107:-8 108:14 110:-11 111:-8 112:40 113:-14 121:26 122:21 123:47
no one	37:28
no _ need	37:32 99:-19 105:36 121:10
is not	23:-8 25:-10 37:23 46:17 47:-10 52:-25 58:-9 59:52 62:-14 64:12 76:-14 78:-10 79:-8 86:43 93:30 100:-28 101:24 105:21 109:14 111:50 112:18 113:-12 118:47 123:9
not need	37:43 56:29 83:12 102:-11 105:57 121:8 123:-40
#d _ not	37:30 123:-11
not _ any	59:17 90:16 111:8 112:17 118:10 123:25
longer==	1:-10 23:-13 35:-13 36:-8 37:56 39:-15 55:9 59:20 61:41 64:12 68:28 80:10 83:31 85:27 86:12 98:-13 99:55 100:-11 105:28 112:-12 113:28 114:13 121:27 123:-17
longer	1:-10 23:-13 35:-13 36:-8 37:56 39:-15 55:9 59:20 61:41 64:12 68:28 80:10 83:31 85:27 86:12 98:-13 99:55 100:-11 105:28 112:-12 113:28 114:13 121:27 123:-17
no longer	23:-11 37:28 61:44 83:32 85:28 86:16 99:27 105:30 112:-8 113:20 121:28 123:-17
longer need	37:22 99:-15 105:37
#d _ no	37:16 39:11
is _ longer	37:38 46:9 61:14 85:11 86:18 113:17
#n _ no	37:28 39:36 46:20 86:21 92:12 97:13 112:-11
^ number	0:-18 3:9 35:35 37:14 59:14 80:11 91:19 94:23 101:11
number _ is	37:15 41:16 58:18 59:-10 63:21 100:12 118:12
add==	1:-12 9:-12 20:35 32:-8 33:-8 34:8 37:-8 38:124 48:47 49:-15 54:-9 55:68 56:-32 57:48 65:-11 67:-8 78:10 79:-14 97:77 119:59 120:-33 121:-10 123:27
tang==	17:-9 18:11 39:24 48:30 67:-9 87:90 90:95 117:22 120:-13
add	1:-12 9:-12 20:34 32:-10 33:-8 34:8 37:-8 38:124 48:47 49:-15 54:-9 55:68 56:-33 57:48 65:-11 67:-8 78:10 79:-14 97:77 119:76 120:-33 121:-11 123:27
^ add	1:-8 38:126 48:42 49:-13 54:-8 55:67 56:-30 57:49 65:-10 79:-14 97:69 119:35 120:-26 121:-8 123:-12
add wire	48:15
short_fret	38:12
mm count	80:17 84:-12
count #n	40:-16 48:-9 65:8 71:39 75:-16 80:16 81:27 84:-33 97:25 98:9 113:-16 115:28 116:11 119:-9
tang	13:-8 17:-9 18:10 39:24 48:30 67:-9 87:90 90:94 106:25 117:22 120:-13
tang #d	38:8 48:14
in count	80:21 81:-14
plac ~	71:10 91:-9
@wire count	9:-9 49:14 65:-17 78:16 115:8
count #c	9:-8 49:10 71:30 75:-16 78:9 80:35 84:-21 91:-15 97:11
kind _ wire	24:13 48:23
#n _ count	81:8 84:-9 116:9
#d _ count	80:32 81:-18
wire _ count	65:-8 78:12
#c length	80:20 84:-9
in length	3:-14 40:23 79:9 80:8 81:11 119:10
#d count	81:20 84:-18
count _ wire	9:-8 49:15 65:-15 78:10 80:11 115:10
count _ length	40:-9 80:28 81:24 84:-27 113:-9
length _ count	81:20 84:-18
add #n	38:38 97:41
add _ mm	38:24
in ~	38:16 54:26
to _ tin	37:29 38:12 74:8 77:10 81:-8 123:13
add #d	38:33
add _ in	20:13 38:11
lot==	0:8 1:12 3:-12 4:-8 5:8 7:8 8:-9 13:-14 16:-8 17:-8 19:12 23:11 27:-8 29:-8 36:-15 38:13 42:-15 43:23 46:-9 47:-8 64:-8 70:15 72:210 76:-8 80:8 82:31 83:61 95:-8 112:-12 113:-13 123:16
from lot	72:45 123:27
lot #n	42:-8 72:104 123:27
@wire _ lot	38:10
from _ #n	0:-9 4:-15 44:25 46:11 50:17 51:8 53:-9 69:8 70:-10 71:50 72:19 74:18 81:14 88:-8 92:-14 96:-14 104:8 108:34 110:-11 123:46
of lot	72:24
@wire lot	19:16
the _ lot	70:8 82:13 83:22
lot #c	70:11 72:67
of _ #c	20:13 40:8 49:-10 59:26 115:9
add _ of	38:19 48:18
from _ #c	72:8
from number	70:-11 81:21
from piece	69:15
into tin	78:23
@wire _ tin	38:14
^ throw	22:-9 39:85 80:37
drop==	13:-15 16:-10 17:-12 25:-12 26:-17 29:-10 32:-13 37:16 42:-12 46:27 47:91 50:10 56:77 59:14 83:33 84:-11 85:57 97:-8 98:-13 99:101 101:-9 102:-11 105:11 106:-8 112:8 113:-9 119:-14 120:-10 121:78
drop	1:-11 13:-16 16:-10 17:-12 25:-12 26:-17 29:-11 32:-15 33:-8 34:-8 35:-13 37:15 38:29 39:-8 42:-13 46:26 47:90 50:33 53:18 54:-8 56:76 59:14 83:33 84:-11 85:57 97:-9 98:-14 99:100 100:-8 101:-10 102:-11 105:10 106:-8 112:8 113:-9 119:-15 120:-10 121:90
^ drop	13:-14 16:-9 17:-12 25:-10 26:-16 32:-12 37:17 42:-12 46:27 47:92 50:10 56:78 59:14 78:8 83:33 84:-10 85:67 97:-8 98:-12 99:74 102:-9 105:16 112:-12 113:-9 119:-13 120:-10 121:78 123:-19
in tin	78:10
drop _ in	38:11
put _ in	3:8 18:15 33:8 35:33 61:27 94:15 95:9 123:12
into the	0:-9 1:-8 18:12 38:38 69:13 71:35 74:15 76:10 78:19 79:-9 82:8 96:-10 108:-9
into _ tin	0:-9 1:-8 38:45 71:36 74:15 78:9 79:-9 108:-9
short_fret of	38:8
add a	34:13 48:14 55:18 56:-8 57:10 119:8 123:10
add _ #d	123:42
an #n	38:15
#n piece	38:14 41:-8 78:16 80:14 81:-9
add _ piece	38:19
add _ offcut	38:13
add #c	38:18
#c offcut	38:8
#c piece	38:8
#d _ each	49:22 81:-11
each $	8:9 16:17 38:13 69:-12 81:20 116:8
#c _ fret	71:14
mm each	49:18 81:-10 116:9
#n _ each	49:24 69:-12 81:18 120:14
@wire each	65:11
each #n	14:26 115:8
each _ mm	115:11
raw end	1:10 38:11
@wire _ end	1:10 38:18
dress end	3:8 74:-10 77:10
both==	1:13 3:-8 25:-10 29:13 38:27 69:23 80:11 81:27 99:16 100:16 101:27
both	1:13 3:-8 25:-10 29:13 38:27 69:23 80:11 81:27 99:16 100:16 101:27
both end	1:22 3:-8 38:12
both _ raw	1:13 3:-9
raw $	3:22
end _ in	74:-10 77:10
the _ both	99:17
of _ end	38:9
chuck==ed	78:53 80:24 81:-17 123:-8
chuck	1:-11 37:-8 39:82 78:55 80:18 81:-17 123:-11
^ chuck	37:-8 39:68 78:43
chuck _ of	80:24 81:-17
threw==	22:-10 38:16 39:102 56:12 71:9 77:17 78:20 85:8
threw	22:-10 38:16 39:102 56:12 71:9 77:17 78:20 85:8
^ threw	38:17 39:42 78:18
threw #n	39:13 78:8
threw #d	39:20
threw _ in	71:11
drop==ped	38:30 76:10
across==	3:-11 19:16 38:23 40:26 60:13 75:30 84:9 88:15 91:-10 97:-8
across	3:-24 19:16 38:23 40:61 41:14 60:13 75:27 77:-10 79:13 88:15 91:-10 96:-9 97:-8
across $	84:10
bent==	5:-8 18:33 38:19 39:9 40:16 42:42 65:9 76:8 80:11 89:-8 90:68 93:18 123:-12
bent	5:-8 18:33 38:19 39:9 40:16 42:42 65:9 76:8 80:11 89:-8 90:68 93:18 123:-12
end bent	40:8
bent to	18:25 40:18 41:8
across _ bent	41:11
end _ to	40:8
its==	0:-10 1:34 2:-14 6:10 13:-11 17:-12 18:23 23:-9 25:9 29:-8 31:24 32:34 36:-9 38:-13 40:-10 42:-12 44:26 49:13 53:18 59:12 72:16 79:17 82:10 84:9 86:52 87:16 88:12 90:22 91:32 92:34 100:26 102:9 114:-10 120:-8 121:11 123:-28
its	0:-10 1:34 2:-14 6:10 13:-11 17:-12 18:23 23:-9 25:9 29:-8 31:24 32:34 36:-9 38:-13 40:-10 42:-12 44:26 49:13 53:18 59:12 72:16 79:17 82:10 84:9 86:52 87:16 88:12 90:22 91:32 92:34 100:26 102:9 114:-10 120:-8 121:11 123:-28
its end	1:32
radius #n	40:10 45:9 84:10
mm in	0:22 8:-10 48:12 65:20 75:11 80:13 87:-12
@wire _ its	31:29
across _ end	40:24
end _ #n	92:27
radius _ mm	40:24 45:33 73:-14 84:13
mm _ ~	45:-19 48:18 55:-9 68:24 84:40 97:-9 120:-13
measur across	3:-16 38:13 40:31 41:22 77:-8
measur _ its	2:-8 79:8
their==	9:31 17:-8 19:20 26:14 74:-10 80:11 94:9 117:12
their	9:31 17:-8 19:20 26:14 74:-10 80:11 94:9 117:12
of _ measur	0:-10 4:37
tin #d	22:-9 38:32
tin _ in	7:14 38:15
tin _ mm	38:14
short==s	38:-8 78:56
put _ short	16:10
short _ #d	41:41
piece _ #d	38:13 81:11
#n short	3:-11 41:20 44:-19 74:40 88:-8
mm _ into	38:23
fret _ #d	3:38 40:-9 71:8 123:-12
^ scrap	1:-8 39:131 80:78 81:-14 97:-15 99:17 111:27 123:-8
why ~	0:-8 39:12 47:13 76:25
scrap piec	1:-9 22:53
scrap _ the	0:10 80:13
scrap #d	39:22 80:-8
#n why	76:14
scrap _ piec	39:9
scrap the	80:8 97:-14 99:18 111:28
)~"
R"~(scrap _ #d	80:24
becaus==e	0:-12 8:-8 23:20 28:-10 39:33 47:42 52:74 54:-12 68:65 75:8 76:34 80:26 81:-9 94:11 100:55 109:51 111:-16 116:-16 117:-12 118:70 123:-38
scrap piece	39:17 80:-11
becaus	0:-12 8:-8 23:20 28:-10 39:33 47:42 52:74 54:-12 68:65 75:8 76:34 80:26 81:-9 94:11 100:55 109:51 111:-16 116:-16 117:-12 118:70 123:-38
#n becaus	39:30 76:21 80:-16
becaus ~	39:22 47:16 52:54 54:-11 68:38 76:35 80:19 100:58 109:46 111:-14 116:-10 118:40 123:-12
piece _ becaus	39:17 80:-11
@wire becaus	80:17
scrap _ of	80:8
of _ becaus	76:9
scrap #n	39:37 80:21
away the	37:19 39:-12 80:21 123:13
throw _ the	80:23 123:13
away _ #d	80:15 123:13
bin the	80:38
throw _ piece	39:18
out _ #n	22:-8 39:20 41:12 69:12 74:8 90:9 100:17
away _ #n	39:16
throw _ #d	39:12
throw number	39:26
#n out	0:-10 5:17 35:30 39:24 47:36 64:-8 69:13 70:17 71:15 80:8 86:19 100:11
throw _ #n	39:29
number _ out	35:12 71:-8 100:11
throw #d	39:16
#d away	39:22
throw _ away	39:12
#n away	39:36
number _ away	39:21
@wire away	39:11
of _ away	39:11
@wire out	39:12 81:20
of _ out	35:11 39:16 69:13 81:8 94:11
the _ away	39:9 99:18
#n went	4:-8 39:21 69:-8 74:13 81:12
went _ the	39:31 74:11 79:9
in _ bin	39:32 80:35
the _ goe	9:13 26:-8 29:-8 67:10 100:36 113:17
@wire went	69:14
i threw	39:32 85:9
threw out	39:19
threw _ the	78:14
out _ #d	2:23 41:17 45:-8 69:15 79:-10 80:15 81:-10
threw _ #n	39:30
out #d	41:9
threw _ #d	38:12 39:18
threw _ away	39:15
we threw	39:29
threw piece	39:25
out _ of	80:11
out #n	41:12 71:9 80:19
threw the	39:13 77:18 85:9
threw _ of	39:16
no good	39:29
#n _ scrap	39:25 80:9
@wire _ no	39:11
piece _ is	39:21
^ measur	3:-24 40:121 77:-8 78:-14 79:79 123:-8
measur job	40:25
@job bend	40:14
radius #d	3:-13 40:39 45:74 73:-21 119:-13
across measur	40:9
across slot	40:9
measur _ job	3:-11 40:28 41:8
job _ bend	40:20
@job _ radius	40:14
bend _ #d	3:-12 40:39
mm _ @job	3:-13 40:8 41:26
job _ measur	2:13 40:9 79:-10
#n _ across	3:-12 40:33
measur _ measur	40:9
across _ across	40:9
straight	0:13 3:-11 13:24 38:8 40:31 51:34 81:-8 88:18 93:113 123:19
measur straight	38:9 40:22
#n bend	40:9
measur _ the	86:8 91:12
#o _ radius	45:9
radius _ slot	40:16
#d _ measur	40:11
#n _ radius	40:9 45:12
bend _ #n	40:10
across job	3:-9 40:14 41:11
slot _ measur	40:13
across _ job	3:-8 40:15
radius _ in	40:16 45:25 73:-9
fret _ length	41:11
straight _ slot	0:15
#d measur	3:-8 41:14
measur _ #n	40:8 78:12 123:20
#n _ bend	40:10 42:26
mm _ radius	40:11 45:16
length _ measur	40:11
#d _ straight	40:21
^ fret	0:-18 3:-34 16:-15 17:-38 24:-11 33:-16 35:15 40:85 41:59 43:16 44:35 69:-14 71:-8 72:20 74:33 76:74 79:-11 81:-9 88:32 89:19 90:-41 123:28
@job measur	0:-10 4:37
@job measure	40:26 75:28
of _ measure	40:18
the _ measure	40:8 75:12 79:15
measur _ for	40:25
in at	19:9 66:12 71:11 75:11 86:-8 109:25
mm at	45:31 68:-8 91:9
measur _ at	74:24
mm across	40:13 48:8
#d _ across	40:11 41:11 48:8 75:9
mm _ its	87:9 91:22
to _ mm	3:-11 40:31 45:26 50:8 54:22 68:44 84:-17 86:12 91:-10
#d across	75:21
#d _ bent	38:10
came==	0:-9 1:-8 2:21 3:-17 8:-8 13:-10 16:-8 17:-11 20:15 21:-15 24:47 33:-8 34:14 35:-9 38:-11 41:75 43:9 44:33 45:-10 49:106 62:28 65:-8 66:-27 69:19 70:18 79:-10 87:-10 88:-8 90:-8 94:-8 109:-8 116:142 117:-10 123:-11
came	0:-9 1:-8 2:21 3:-17 8:-8 13:-10 16:-8 17:-11 20:15 21:-15 24:47 33:-8 34:14 35:-9 38:-11 41:75 43:9 44:33 45:-10 49:106 62:28 65:-8 66:-27 69:19 70:18 79:-10 87:-10 88:-8 90:-8 94:-8 109:-8 116:142 117:-10 123:-11
^ came	3:-10 41:32
came short	3:-11 41:35
#n if	2:11 3:-11 5:10 16:10 40:-8 41:24 123:8
if short	3:-11 40:-8 41:31
short ~	3:-11 40:-8 41:31
@job short	74:25 88:-13
short by	3:-13 40:-11 41:50
@job if	18:9
short _ #n	38:14 41:50 74:13 85:-9 108:-9 123:12
#n _ measur	3:11 40:-26 71:11 74:16
job _ if	2:11 5:10 16:10 41:18 123:8
#n _ short	0:9 3:-11 38:12 40:-8 41:49 43:9 108:-9
if _ ~	3:-11 40:-8 41:31
short _ job	3:-8 41:25
@job _ short	41:10
across _ the	60:13 75:19
#d _ by	36:14 84:21
and _ bend	18:10
#n _ if	5:8 123:18
if $	41:13
short @job	3:-9 41:17
came _ @job	3:-9 41:17
short _ slot	3:-9 41:27 74:8
fret _ short	41:22
#d _ if	41:22
slot _ is	75:20 77:13
with _ raw	1:11
#n came	2:22 40:-8 41:32 44:41 45:-8 69:20 70:21 79:-8 116:17
and _ came	69:22
came out	2:20 41:38 45:-8 62:31 79:-10
out too	41:-8 123:20
short at	0:9 3:12
out _ short	41:-8 123:20
measur==e	0:-11 2:13 4:32 38:-9 45:9 71:20 75:-8 78:9 79:-11 123:46
#n _ out	2:22 5:22 41:44 45:-8 79:-10 80:11 81:9 100:11 116:8
short _ measur	78:22
with _ mm	38:11
out short	90:-8 123:13
came _ short	34:17 41:11
out _ at	41:10
@job came	41:11
of _ came	49:28 66:-22
@job _ out	41:17 72:18 74:-8 86:18
too _ it	97:16
out _ it	56:11 69:9 100:-8 120:13
short _ is	84:17
fret _ is	0:18 89:9 90:10 91:13
short is	85:22
and _ is	14:-9 17:9 20:16 23:-8 29:9 31:8 33:-9 35:9 52:10 58:21 65:9 66:10 69:-10 75:17 88:-10 90:-10 92:28 93:8 95:8 120:12
the _ came	34:11 38:-8 78:10 116:30
@job _ too	90:9
job _ came	2:10 41:18 44:29 45:-8
came _ #d	40:10 41:8
mm short	41:17
came _ #n	41:12 49:8 87:-9
out _ mm	41:13
is _ by	13:13 36:11 84:12 91:14
#r is	17:-11 77:17 88:19 92:9
end==ed	35:19 40:-11 41:46 61:15 121:9
end up	35:18 40:-10 41:46
up #d	40:-9 41:31
@job _ up	41:23
end _ #d	40:-9 41:31 69:9
turn==ed	6:9 41:28
turn	6:8 29:28 37:9 41:28 83:18 90:-8 101:9
@job turn	41:13
turn out	37:10 41:28
out at	2:23 41:32 45:-8 79:-10 90:10
turn _ at	41:18
#n turn	29:28 41:15 101:10
#o _ up	41:14
up _ in	41:22
#n _ up	17:15 41:11 42:-10 44:18 64:26 88:-11 90:20 92:27 101:22
up _ #n	4:30 35:8 64:32 70:14 88:-9 92:30
came _ at	2:23 41:13 45:-8 79:-10 116:9
^ short	41:15
^ too	3:24 41:16
short _ #r	41:8 44:-11 74:31 88:-8
short slot	41:10
too _ slot	0:11 41:9
have cut	42:12 70:28 77:9
#n too	6:51 40:-12 41:12 89:48 90:9 91:9
we _ cut	70:22
have _ fret	70:11
@job too	41:31
i _ cut	5:9 42:9 68:17 77:10
cut _ #r	69:15
of _ too	22:10 41:28
job _ too	6:51 40:-11 90:11 91:10
slot _ too	90:15
^ finish	16:-8 42:68 43:44 106:-10
finish job	123:24
@job stag	107:8
stag polish	103:18
#n start	42:14 106:-9
start at	29:-9 42:32 86:26 106:-18 110:32
file	3:8 4:10 16:17 42:10 96:10
#n stag	42:13 107:8
polish job	42:22
job _ stag	42:18 107:8
@job _ level	96:11
stag _ stag	103:17
job _ start	42:13
polish _ the	102:18
@job _ yesterday	114:22
start #n	42:13
slot at	90:11
finish _ job	42:37 43:41
start _ hour	42:13
true _ job	42:56 106:-8
#n _ nip	76:23
corner _ job	42:18 123:21
#n _ pull	38:8 42:16
finish @job	113:12
seat job	42:19 106:20 123:20
finish _ #n	123:24
start _ at	42:9
@job _ pull	0:11 42:16 71:-12 94:15
pull _ @job	42:28 71:-12 106:38
polish _ #n	42:24
dress _ the	102:29
#n _ yesterday	116:8
#n _ seat	42:10 94:13
finish pull	42:12
finish _ of	0:10 1:-9
#n #n	40:21 44:-10 49:11 79:80 80:9 81:11 87:21 90:22 107:20 108:-9 114:11
finish _ for	42:9
#n _ hour	43:9 96:16
@job #n	0:13 4:-14 13:-12 17:-8 35:-21 36:11 40:17 43:-8 44:-11 47:-11 74:10 76:49 80:-8 81:43 89:25 90:31 91:38 92:9 94:18 96:-13 106:10 107:8 112:-14
@job _ hour	69:11 81:-11 106:16
#n yesterday	0:-8 35:14 39:12 96:11 106:23
job _ yesterday	0:-8 35:12 70:8 96:11 106:23
finish seat	42:22
^ polish	25:-11 27:24 42:24 102:47
polish is	25:-9 102:16
polish _ done	25:-9 102:16
finish of	42:9
#n this	94:13 100:17 106:26 116:12
job _ this	106:27
#n _ morn	94:13 100:16 106:26 116:12
^ nip	103:14
are finish	31:9 42:11 107:9
finish for	11:21 29:-13 107:25
the dress	27:9 106:-11 107:18
dress is	102:15
is finish	42:16 43:19 101:11 113:32
the corner	27:49 42:11 103:35 123:18
#n _ #t	42:16 51:13 74:-10 106:9
the pull	102:9 106:13
pull is	42:16
^ @job	0:17 1:-19 2:24 4:11 5:-15 6:46 9:-9 12:-8 13:29 14:-10 16:22 17:-11 23:-16 24:-9 25:-10 26:-13 27:-18 28:-8 29:-18 30:-12 31:-8 33:-21 34:-11 36:-14 37:-12 39:-10 40:-8 41:-10 42:20 44:28 45:-21 46:63 47:26 52:-8 54:-9 57:-9 63:-12 64:53 69:20 70:25 72:22 73:31 75:41 76:36 81:-16 82:-15 83:36 86:21 89:-9 91:17 93:39 94:-13 96:17 98:-9 99:-8 102:-9 104:-9 106:-26 107:-14 112:86 113:24 114:-9 117:-10 122:-8 123:34
@job _ is	0:9 13:-10 18:22 42:16 47:9 75:17 86:21 93:15
)~"
R"~(file is	42:10
the _ file	3:9
file _ done	42:10
the nip	102:19
true is	42:10
true _ done	42:10
the file	4:10 16:17 96:10
is seat	42:18 94:17
seat $	42:10 94:10 106:39
is crown	42:19
#n _ done	5:11 71:-10 74:10 123:13
@job _ nip	42:10
nip $	42:9 106:14
@job _ seat	42:9
is level	42:9 44:12 96:10
#n _ level	17:32 96:25
is bend	106:19
^ done	42:14 43:40 71:19 94:22 107:21
with pull	42:15 106:-8 107:41
done _ pull	42:13
pull _ job	71:15
with dress	3:8 74:-10 77:10
dress on	27:9 42:17 102:29 106:16
with corner	42:8
corner for	42:8
done _ corner	42:8
bend for	106:30 107:15
done _ bend	42:8
bend _ the	106:30
all fret	42:10 44:10
@job _ #t	106:16
the _ tomorrow	26:35 104:9
all _ fret	17:18 43:14 74:8 82:11
@job @day	46:28
the _ @day	104:13
have _ all	42:13 123:13
all on	109:13
@job yesterday	42:28 75:-9 94:13 95:9 123:29
all _ @job	42:9 82:44 112:15
of _ yesterday	65:9 95:10
of _ tomorrow	42:8 100:10
the _ yesterday	38:13 42:18 43:28 75:-9
are cut	5:-9 42:21 69:22 70:19
is cut	42:24 70:12
cut _ at	5:22 29:-13 70:14
have been	4:-11 23:42 43:12 69:-11 74:9 80:9 90:10 100:17 117:10
@job _ been	74:-10 77:36 106:11
have _ cut	6:10
cut @day	70:10
the _ @job	11:-8 13:17 15:9 23:25 69:10 88:11 93:8
#n _ all	44:11 70:21 71:11 89:18
are _ cut	70:20 81:-10
@job _ all	4:37 13:-18 16:10 17:25 42:19 43:11 44:20 70:11 72:20
all _ at	44:9
is all	20:18 23:-8 44:29 68:15 70:14 89:11
is _ cut	42:20 70:14
is _ yesterday	42:18 43:11 96:10 100:24 101:-14
finish #n	42:17
done yesterday	43:11
done _ morn	44:-9 114:11
^ seat	42:24 94:58 102:65 103:24
seat all	42:10
seat fret	42:11 94:60
in _ yesterday	116:10
finish _ fret	43:11
@job this	44:15 86:8 106:8
pull _ on	42:11
@job _ morn	44:15 86:8 106:8
seat==ing	27:29 32:-10 42:11 98:-8 102:53 103:23 106:36
tang==s	42:11 106:27
tang of	48:9 87:34
tang _ the	87:31 106:17 117:14
end _ the	38:13 75:11
am done	42:27
i _ done	42:14
am _ with	42:24 107:11
we am	42:10 107:22
am finish	42:13
finish with	42:46 106:-8 107:-8
we _ finish	42:18
finish _ pull	42:14
i are	107:12
are done	123:22
board _ the	42:30
have done	11:23
the tang	18:15 39:15 48:8 87:51 90:12
have _ with	106:14
we are	0:9 4:-8 5:9 11:-17 12:-8 22:-10 28:-21 29:-13 47:20 51:23 52:30 53:38 101:10 106:40 107:21 108:15 111:37 117:13 121:11 123:18
done pull	42:14
am _ pull	42:10 107:11
pull $	42:27 71:36 76:33 106:13
finish _ doing	42:8
pull #n	71:47
nip==ping	102:19 103:14
i _ finish	42:9
with tru	107:8
tru $	42:22 86:-8 106:38
hammer	3:-10 27:11 76:49 123:36
with _ tomorrow	107:11
pull yesterday	42:11
^ bend	102:20 103:27 107:26
done @day	43:11
done _ at	43:18 44:8
^ tru	13:-10 42:62 75:-9 93:15 103:9 106:27
slot _ done	107:33
^ pull	42:34 69:-11 71:149 74:-8 102:46 103:8 106:18
^ true	102:8 103:22
pull _ done	42:27
pull finish	42:9
done _ #t	43:9
pull end	106:8
@person _ pull	42:15
@person has	26:-16 29:-16 33:33 42:45 58:17 59:-9 60:-8 61:29 63:-10 64:-14 67:9 104:55 105:10 106:40 108:18 110:-14
@person _ done	33:11
@person is	28:-14 29:-22 30:12 42:-12 51:-13 54:-10 58:11 60:51 61:43 62:40 63:-11 82:8 101:-10 106:37 108:20 109:63 110:47 123:19
doing the	15:13 32:12 103:14 106:21
doing _ slot	103:14 106:21
tru _ board	42:20 75:-9 102:14 103:11
board _ #n	27:15 75:10
has _ end	42:13
has bent	42:15
@person _ bent	42:15
tang on	87:10
has _ tang	39:16 42:8
tang _ @job	42:8
has pull	42:13 106:-8
@person _ dress	106:17
is bent	42:13 93:10
bent #n	42:13
@job _ bent	18:25 42:13 93:10
bent _ hour	42:13
tru==ed	42:40 59:12 64:16 75:-10 86:-9 93:14 106:26 122:11 123:8
is tru	42:28
@job _ tru	42:22
is pull	42:28 94:9
#n _ tru	106:9
pound job	16:-11 43:16
#c _ at	43:9
again _ @job	24:19
and _ for	16:9 49:-9 69:-11 70:13 77:8 80:16 82:14 115:15
#r for	46:14 69:11
#c tomorrow	43:8
#o _ at	44:10 94:-9 114:23
at _ tomorrow	29:15
them==	0:-16 1:-10 2:33 4:-11 5:-10 8:-14 9:-8 13:17 16:27 20:-8 22:14 25:24 27:-9 29:-10 33:-8 34:-10 41:-15 49:-15 51:18 65:9 71:41 73:28 77:-16 78:20 80:24 82:20 91:10 97:34 99:13 101:13 109:-8 110:-11 116:28 119:-11 120:23 121:27 123:-18
them	0:-16 1:-10 2:33 4:-11 5:-10 8:-14 9:-8 13:17 16:27 20:-8 22:14 25:24 27:-9 29:-10 33:-8 34:-10 41:-15 49:-15 51:18 65:9 71:41 73:28 77:-16 78:20 80:24 82:20 91:10 97:34 99:13 101:13 109:-8 110:-11 116:28 119:-11 120:23 121:27 123:-18
press it	43:16 123:18
press that	105:10
it again	37:11 85:11 101:-9 123:16
again yesterday	114:9
again tomorrow	101:10
it _ tomorrow	46:8
again _ at	94:9 101:17
^ they	53:11 63:11 111:9 112:16
is _ again	2:10 44:14 62:14 64:17 76:16 101:14
^ that	35:24 39:18 42:23 101:8 107:17 111:11 112:19 122:-8
that are	31:18 81:11
are press	43:18 88:-8
that _ press	100:11 101:12
are _ again	101:14
it _ press	24:15 43:21 123:-10
that were	49:18
pass at	3:24
press _ pass	16:-8 43:9
next _ at	29:11
pass #n	98:12
done _ #c	43:45
pass is	43:17
next _ is	43:17 111:14
pass _ done	43:17
only came	43:15
came up	17:-8 24:55 41:10 43:12
#c on	43:40 58:13 59:13 97:-8 100:8 109:-8 117:9
i _ came	43:9
only _ up	43:17
came _ to	43:13
only got	43:55
only _ to	2:13 4:78 16:-9 43:47 53:-8 110:-11
got _ #c	43:51
^ only	1:58 2:11 4:70 13:-9 16:-12 17:-8 22:50 33:30 43:33 44:53 53:-8 65:14 74:-9 88:-9 98:21 106:-10 110:-15 116:12 117:-9
to _ pound	43:16
i _ got	40:11 98:24
on _ and	51:-10 81:-9 88:13 91:10 95:8 96:9 108:26 110:-11
lb _ slot	43:13
and _ at	10:21 45:8 51:10 94:9 95:12
came to	40:13
came _ #c	49:15 66:-12
press _ lot	43:20
of them	8:-10 16:42 25:24 51:20 71:15 97:39 98:8 110:-10 116:31
all _ them	16:45 51:20 110:-10
lot _ @job	43:10 72:9
lot with	19:15
got press	43:20
press tomorrow	26:31 100:24 104:12 105:10
finish this	4:13 43:9
press _ is	43:12 54:28 105:9
finish press	42:-19 43:48
@job sprang	44:24
#n sprang	44:72 88:-11 94:-14 123:16
sprang fret	44:14 74:-8
from fret	44:14 74:19 88:9 96:-9
#n to	0:-20 1:-14 2:12 3:-13 4:35 11:-17 13:-12 16:60 17:10 24:-8 28:-15 29:-13 30:13 33:-10 35:-14 37:-14 39:-11 40:-15 41:-13 42:-10 44:-11 45:-8 51:71 52:11 53:62 54:-12 58:8 60:-11 63:38 64:-11 68:15 69:14 72:-9 74:83 76:-9 81:-34 82:17 88:45 89:-9 90:-8 92:-16 94:-19 96:-24 98:-22 100:-12 104:69 108:60 109:-12 110:15 111:-8 116:-14 117:57 119:-11 123:18
#o from	44:10 74:-8 88:9 110:14
#r from	44:-15 53:13 74:31 88:-9
from slot	4:-8 44:21 74:24 88:-8
@job to	11:-10 15:9 27:10 29:10 44:23 63:50 74:27 114:17
to slot	0:-11 40:-9 44:28 74:77 96:-12
recheck _ #n	11:24 17:-18 44:41 74:-11 88:-16 114:76
from _ from	44:11 48:-15 49:11 55:-8 115:22 119:16
from _ job	2:-10 3:-11 44:-21 70:41 71:-12 74:36 76:13
the _ sprang	44:29
job _ sprang	44:30 123:16
sprang _ #n	24:34 44:12 74:-8
fret _ from	70:-9 71:24 72:16 74:25 76:13 96:-9
to _ and	10:11 44:15 51:15 60:8 92:22 101:10 115:8
from _ and	44:8 74:13 81:-8 88:10 121:12
and _ from	10:17 44:12 69:31 71:13 74:-14 96:-8
slot _ from	4:12 35:14 40:13 44:8 74:18 88:-15
#o sprang	44:18
@job high	44:8 74:-8
high #n	88:32
job _ high	17:18 44:8 74:-8
recheck job	11:25 17:-17 44:47 74:-10 88:-15 114:45
bass to	44:9 74:-8
to _ from	10:11 39:12 44:-13 51:26 74:17
line _ to	44:12 74:-15
slot _ to	0:-10 2:28 43:11 71:15 74:12
humidity==	44:49
humidity	44:49
humidity #n	44:25
middl _ #n	17:-10 44:15
recheck the	44:34 88:-18 114:22
still level	17:-13 44:57
recheck @job	44:8 114:34
is $	8:9 40:15 50:-15 123:60
fine==	0:8 3:44 41:-21 44:32 54:10 74:-15 79:-13 88:45 101:13 123:24
fine	0:8 3:44 41:-21 44:32 54:10 74:-15 79:-13 88:45 101:13 123:24
still _ #n	88:17
all are	44:9
@job _ are	81:-12 90:26 94:12
level this	44:8
still _ this	44:8
level _ morn	44:8
level yesterday	44:12 96:20
still _ yesterday	44:14
are $	74:8
on _ all	12:16
is good	3:-10 44:11 76:16 114:-8
good this	44:8
good _ morn	44:8
sprang $	44:18
of _ sprang	44:8
back #n	101:22
#n _ back	17:-9 24:25 44:64 74:-9 88:-9 100:8 101:-10 123:12
back _ at	101:8
back this	100:19
back _ morn	100:19
sprang again	44:12
again _ job	44:12
back again	62:14
back _ of	71:26
and _ sprang	44:24 94:-10
back _ on	24:10 44:10 105:12
on _ yesterday	94:20
again _ #t	101:19 114:9
back tomorrow	100:13
proud==	17:50 58:14 88:17 93:11 97:-8
and fret	17:-9 40:8 76:8 81:12 94:18
)~"
R"~(proud	17:50 58:14 88:17 93:11 97:-8
proud on	17:25
job _ and	33:30 88:8 89:13 95:8
and _ fret	13:30 41:29 44:8 74:14 89:10
#n _ proud	17:27
#o is	52:10 90:8 92:12 96:8
and _ the	8:-10 9:36 11:-10 13:-13 16:33 17:42 20:-10 21:27 27:71 30:20 33:-22 53:8 56:17 81:10 85:-18
#r are	53:8
still high	17:16
and _ #r	95:13
stand proud	17:55
#n _ high	17:-15 44:12 87:13 123:25
and _ #n	0:84 17:-14 40:8 46:41 81:11 89:43 95:8
show==s	3:9 51:8 58:13 66:36 89:10
say==s	1:-11 44:11 46:11 48:-8 49:8 54:32 58:20 68:31 87:10 91:20 116:9 117:8 123:13
edge==	3:9 16:-10 17:10 43:-8 44:29 75:38 88:43 93:8
edge	0:-9 3:9 16:-10 17:10 41:13 43:-8 44:29 75:38 88:43 93:8
the _ edge	93:11
rock==s	17:-20 44:56 74:-18 88:124 91:-8 114:-13 115:14 123:17
#n it	35:26 88:10
rock	2:-8 17:29 43:-13 44:54 57:10 69:-8 74:-32 81:-8 88:193 91:-9 92:-15 96:-8 114:-14 115:14 123:41
it rock	88:40
rock on	17:49 44:58 74:-21 88:20 123:-15
job _ it	88:12
#n _ rock	74:-17 88:42
it _ on	88:38
rock _ fret	44:9
#n rock	17:33 44:12 74:-9 92:-11 123:55
job _ rock	44:-9 88:68 92:-11 123:-8
#r _ #t	53:16
trebl edge	88:10
on _ edge	3:11
edge $	75:19
@job it	26:11 76:8
the _ it	17:9 41:17 54:10
and it	35:9 39:9 41:8 45:-8 66:17 75:17 81:-9 84:-9 85:8 88:20 93:9 95:9
@job _ it	3:-12 24:10 40:15 46:19 47:26 69:13 70:-8 76:11 81:-8 88:8 95:9 96:13 112:19
#n #r	94:14
#r rock	88:9
job _ #r	89:12 94:14
the _ rock	44:27 115:14
rock $	17:-11 44:-9 88:84 92:-11 115:14 123:35
and _ #o	11:15 20:11 33:-11 44:12 46:-10 69:11 94:11
the _ through	43:21
#n through	4:30 43:21 70:18 74:-16 94:15
slot _ through	70:21
rock _ trebl	88:11
through #n	4:30 20:17 43:21 70:18 74:-16 94:15
to _ rock	17:39 44:16 74:-8 88:-68 123:63
rock _ the	44:17
@job #r	70:11 89:27 90:10
#n -	0:23 3:-13 4:11 5:20 6:-11 11:-9 13:17 15:11 16:-14 17:9 27:29 29:23 33:22 35:-18 37:-10 38:9 39:-8 40:11 41:-9 42:17 43:-10 44:-14 46:-9 47:26 49:8 63:13 70:-16 72:15 73:8 80:-9 81:11 82:10 83:-13 86:19 90:-11 92:-10 106:16 113:24 123:-12
@job _ -	0:17 36:9 40:19 42:13 63:9 72:14 88:16
and _ to	43:10 44:12 51:9 60:8 74:78 81:-10 88:-11 96:-9
rock at	44:12 88:10
show _ #n	3:9 13:65
- fret	92:12
and _ -	51:9 53:-9
- _ #n	2:17 96:8
say #n	48:-10 68:20 87:10 91:10 117:10
say _ to	117:10
steady==	13:-8 17:-12 42:-19 44:90 88:118
steady	13:-8 17:-12 42:-19 44:89 88:123
at _ of	44:17 90:12 91:13 114:-9
#n _ are	42:12 95:10
all _ steady	44:16
is steady	17:-10 88:45
steady @day	44:11
steady _ at	44:18
recheck all	44:9
steady at	44:10
steady _ #t	44:10
steady $	44:9 88:102
all steady	42:-17 44:82
all _ #n	80:18 88:20
steady yesterday	44:8
is _ steady	42:-9 44:35
all _ @day	44:8 109:13
steady of	44:28
steady _ @job	44:14
steady _ the	44:12
steady _ job	17:-9 44:16 88:22
steady on	44:18
all _ on	17:15 19:30 29:-12 33:28 42:-9 44:14 89:11
all _ down	44:21
down _ at	96:14
still down	44:20
scal==e	13:52 45:53 65:-8 66:62 67:27 84:-10 87:-18
^ new	3:-16 5:-8 13:-9 30:18 45:112 46:10 48:49 57:84 58:-8 59:-18 70:29 84:13 97:54 117:13 119:34 123:-17
job wire	45:8 84:-8
scal	13:52 45:53 65:-8 66:62 67:27 84:-10 87:-18
scal #n	66:10
scal #d	45:17 87:-16
job _ @wire	45:8 84:-8
wire _ fret	90:12
fret _ wire	82:13
scal _ mm	45:15 84:-8
scal _ in	45:10 67:10 87:-9
#c _ #d	80:11
far _ #d	45:13 87:-13
#d _ scal	67:8
nut==	2:11 3:-17 4:30 13:33 17:-9 33:-13 35:9 45:67 71:-9 75:44 84:-10 86:83 87:-10 88:27 89:-13 107:-11
nut	2:11 3:-17 4:30 13:33 17:-9 33:-13 35:9 45:67 71:-9 75:44 84:-10 86:83 87:-10 88:27 89:-13 107:-11
nut width	13:45 45:18 84:-9 86:-8 87:-9
far width	45:22 84:-8 87:-13
far slot	45:12 84:-8
mm _ width	48:8 75:8 84:19 87:-8
nut _ #d	45:10 87:-9
far _ #n	45:20 84:-17
flat==	2:-11 13:-8 17:17 18:27 29:14 44:30 45:78 50:-8 62:10 68:-13 73:-54 84:54 93:10
zero==	45:13 57:17
compound==	45:23
~ for	45:10 49:9
for ~	45:10
flat	2:-11 13:-8 17:17 18:27 29:14 44:29 45:78 50:-8 62:10 68:-14 73:-46 84:54 93:10
~ flat	45:10
flat radius	45:61 73:-18 84:-21
mm to	38:11 45:25 86:12
mm radius	45:16
mm flat	45:23
flat flat	45:28 73:-46 84:42
mm bound	45:9
bound in	45:9
zero	45:13 57:17
zero fret	45:13
compound	45:23
compound radius	45:23
new _ ~	48:29 97:31 119:23
for _ flat	45:10
~ _ radius	84:9
flat _ #d	45:51 73:-14 84:-20
#d _ radius	45:16 84:-8
#n _ flat	62:11
flat _ #n	45:10
#d _ flat	45:42 73:-13
mm _ flat	45:13
flat _ radius	45:40 73:-16
bound _ #d	45:9
in _ mm	7:13
flat _ flat	45:-10 73:-30 84:48
compound _ #d	45:20
radius _ to	45:14 84:-9
to _ radius	41:14
in flat	45:24
flat compound	45:14
in _ flat	45:15
flat _ compound	45:11
in _ radius	84:8
flat $	44:31 123:9
for _ bound	30:8
~ _ in	120:10
end _ radius	38:10
mm _ fret	0:17 24:13 40:19 45:17 84:-9
#d _ zero	45:9
division==s	0:-10 4:18
division	0:-10 4:18 54:16
the _ flat	17:14
fret #d	1:9
^ set	11:-20 23:-33 46:49 54:67 55:8 67:12 72:-10 82:125 83:-20 98:37 103:9 123:-11
set due	11:-10 46:31
due next	46:8
#n no	92:22
no day	46:20
~ due	115:18
due today	11:16 46:8
set _ job	46:18 82:8
due _ @day	11:36 46:9 51:-11 108:-8 117:14
@day _ job	16:-11 104:43
job _ no	92:23
#n _ day	114:13
no _ ~	113:9
the _ no	92:8
#n _ due	11:-9 46:20
@job _ due	11:-10 46:16
promis job	30:11 46:23
promis _ #n	30:11 46:34 115:12 116:-14 117:34 119:-11
@job for	3:-12 11:-8 16:17 36:10 42:-10 45:18 69:-10 76:16 107:21
promis _ @job	46:20
^ move	46:10 114:9
move the	2:11
set the	54:16 67:13 72:-9 82:30 83:-9 98:13 103:38
chang==e	5:8 11:-9 19:28 29:-9 33:-15 51:16 54:69 60:71 62:-8 97:-8 98:34 117:21 119:-8 120:20 121:-9
chang	11:-10 19:27 29:-11 33:-16 37:20 47:21 51:15 54:68 60:70 62:-9 64:-9 97:-8 98:33 100:9 117:20 119:-15 120:30 121:-9
^ chang	37:21 46:8 51:16 54:51 57:-8 60:52 62:-8 97:-8 98:36 117:12 119:-8 120:24 121:-8
chang due	46:9
date _ the	9:17 29:16 117:17
@job must	46:13 90:11
@job _ be	29:9 46:22 113:19
must _ ready	46:14
#n must	16:9 46:8 50:18 83:12 103:14 113:13
job _ must	16:9 46:8 83:13 113:13
the _ must	119:17 121:9
#n has	33:-15 35:8 39:26 40:-9 42:-9 46:21 47:22 64:-13 69:10 73:23 74:19 76:17 77:-13 86:9 89:12 93:13 96:-10 106:9 107:19 112:42 123:-8
job _ has	33:-12 40:-8 42:-8 46:22 47:22 64:-12 73:23 74:11 76:9 86:10 93:14 106:10 107:20 112:43
@job has	27:19 40:12 46:52 47:-26 64:31 74:-10 75:9 77:41 123:50
time until	46:27
has _ until	46:27
has until	46:15
@job _ until	46:14 114:10
has _ next	46:9
promis @day	46:10
promis _ for	46:32
promis #r	46:14
#n _ promis	46:9 117:19
@job _ promis	11:27 46:24
promis _ of	11:12
customer==	18:9 23:14 46:26 47:12 53:10 123:28
customer	12:17 18:9 23:14 36:-8 46:22 47:12 53:10 123:28
^ customer	46:16
customer of	46:19
need it	37:24 46:22
it by	36:32 46:31
customer _ job	46:8
#n _ it	0:-11 17:-10 35:-8 36:15 39:16 41:21 46:19 71:-8 76:20 91:28 92:8 116:10 119:10
need _ by	46:23
owner==	45:9 46:24 47:24 84:-8
owner	45:9 46:24 47:24 84:-8
^ owner	46:13
owner of	46:24
want it	46:34 105:16
owner _ job	46:13
want _ by	46:10
it _ @day	30:11 100:16
@job want	46:18 82:13
it for	1:10 36:9 49:8 69:-10 82:9 104:9 107:31
customer _ @job	46:11
of _ want	46:10
it _ #r	46:18
it on	38:9 46:17 49:11 66:-12
want _ on	46:17
it _ today	46:9 107:11
the owner	46:11 47:24
the _ want	4:10 46:8 82:14
the customer	3:8 46:10 47:12 123:31
promis @job	11:-9 46:48
promis _ by	46:14
have promis	46:11
has no	46:17 64:37 86:9 98:16 112:-13 120:16
@job _ no	64:39 72:15 112:-8
deadlin $	46:15
no promis	46:11
promis day	11:23 46:16
has _ promis	60:8
no _ day	46:11
no deadlin	46:23
deadlin any	46:10
has _ deadlin	46:23
no _ any	46:20 99:33 120:12
deadlin _ more	46:10
no date	46:14
has _ date	46:8
not due	46:22
#n _ not	1:-8 37:17 39:17 41:-16 46:14 47:20 49:-12 72:-22 88:48 93:23 100:14 101:27 110:12 113:39 116:19 122:9 123:-24
longer due	46:15
due any	46:11
no _ due	46:15
due _ more	46:11
take away	37:20 46:13
day from	46:18
take _ due	46:12
from _ @job	35:14 40:14 71:12
remov==e	11:-12 26:-8 32:-18 39:9 46:14 47:29 54:-11 56:40 59:38 61:21 71:13 85:48 93:-8 98:-10 99:77 102:-11 111:15 119:-8 120:-12 121:69 123:-8
remov	11:-12 26:-8 32:-18 39:9 46:14 47:29 54:-11 56:40 59:38 61:21 71:13 85:48 93:-8 98:-10 99:77 102:-11 111:15 119:-8 120:-12 121:69 123:-8
)~"
R"~(^ remov	11:-11 32:-8 46:15 47:19 56:24 59:40 85:44 93:-8 99:64 121:46
remov the	47:23 59:42 85:13 121:24
the promis	11:8 34:26 46:30
day off	46:9 52:33 107:-10 109:29
off _ @job	23:-15 46:8 47:53 52:11 64:10 83:31 107:-10
from job	46:12 70:-8 71:54 123:21
drop _ deadlin	46:32
no _ is	46:12
date is	46:21
job _ any	64:28 83:15 86:9
@job any	37:8 64:12 76:12 83:12 86:10 113:8
@job _ more	37:-12 64:24 76:13 83:12 86:9 113:13
for no	37:9
cancel==	11:-8 13:-17 16:-8 17:-8 26:23 29:-9 31:-13 33:-15 37:-13 47:143 63:-8 100:-10 104:-11 105:152 111:9 112:-10 116:-23 117:-11 118:117 122:47 123:44
cancel	1:-9 11:-8 13:-19 16:-11 17:-8 26:23 29:-9 31:-13 33:-15 37:-16 42:-8 47:141 63:-8 64:-9 100:-10 104:-11 105:152 106:-8 111:9 112:-11 113:-8 116:-23 117:-11 118:117 122:47 123:91
^ cancel	13:-14 26:-17 31:-11 33:-9 47:138 105:103 116:-20 117:-8 118:141 122:40 123:-30
cancel job	47:84 105:-8
why _ job	13:22 17:-8 29:37 112:-11 123:-12
cancel _ @job	47:56 105:-12 118:-8
job _ why	47:9 76:17
cancel the	26:36 47:38 105:24 111:11 116:-8 118:42 123:-20
@job becaus	47:13 76:9 107:11
the _ becaus	47:11 80:22 107:10
cancel _ #n	47:36 116:-9 118:9 123:41
cancel @job	47:42 105:-9
job _ becaus	47:8
is call	47:12 60:39 98:24 119:10 120:10
call off	17:-9 47:95 107:-16 118:42
is _ off	47:13
cancell==ed	13:-9 31:-8 42:-8 46:-8 47:86 50:9 64:-14 86:-9 105:13 111:10 112:-19 113:-11 116:-14 117:-16 118:92 123:45
cancell	13:-9 31:-8 42:-8 46:-8 47:86 50:9 64:-14 86:-9 105:13 111:10 112:-19 113:-11 116:-14 117:-16 118:92 123:45
is cancell	47:108 112:-10 118:34 123:-8
@job _ cancell	47:39
cancell $	47:93 50:9 105:13 112:-10 118:47 123:-9
#n _ cancell	47:70 118:13
^ call	17:-10 47:81 54:-8 97:11 98:66 102:-8 107:30
call _ the	47:33
off @job	47:23
off job	47:20 86:15 107:34
call _ job	47:28
off _ #n	0:-10 13:8 41:13 47:17 69:22 72:14 86:14 107:33 118:12
defin==e	32:-9 45:-20 48:74 55:-8 84:62 85:-12 97:81 119:77 120:-19 121:-15
thickness==	48:10 87:40
name==	5:-8 7:14 17:9 18:-8 25:-9 26:30 45:-36 48:20 53:-11 57:39 60:34 84:66 85:37 87:-11 97:56 98:23 102:-14 120:-47 121:-8 123:-8
material==	5:19 48:77 83:14 97:-38 120:-28
height==	17:19 48:17 49:9 87:26 97:-9
defin	32:-9 45:-20 48:74 55:-8 84:62 85:-12 97:81 119:77 120:-19 121:-15
^ defin	32:-9 45:-11 48:65 55:-8 84:53 85:-12 97:70 119:77 120:-19 121:-15
defin wire	48:64
thickness	48:10 87:40
tang thickness	87:29
name	5:-9 7:13 14:39 17:8 18:-8 25:-10 26:30 29:-8 45:-36 48:19 53:-11 57:37 60:33 84:66 85:37 87:-11 97:55 98:23 102:-14 120:-47 121:-8 123:-9
in name	45:-9 84:22
name ~	45:-34 55:-8 60:15 84:49 85:18 97:28 119:-13 120:-50
~ name	48:37 55:18 84:-15 85:12 97:14 119:-26 120:-39
material	5:18 23:40 48:77 82:20 97:-38 120:-28
~ material	48:47 97:-25 120:-22
material ~	48:66 97:-38 120:-28
~ crown	48:34 97:-16 120:-16
height	17:19 19:16 42:-8 48:17 49:9 87:22 97:-10
crown height	19:16 48:17 49:9 87:22 97:-10
mm material	48:9
crown width	18:-23 38:-9 48:15 87:72 97:-10 120:-10
width #n	73:9 84:12
height #d	48:15 87:17
mm name	45:-19 48:9 55:-9 84:41 120:-12
tang _ #d	48:11 87:15
#d _ name	45:-22 55:-9 84:44
name _ name	48:11 97:35 119:-19 120:-35
name _ material	48:34 97:-19 120:-16
material _ material	48:9
material _ crown	48:16 120:-9
~ _ height	48:16 97:-9
crown _ #n	87:17 88:-9 89:18 97:-10 98:-10 103:55
height _ mm	48:14 87:13
material _ name	48:41 97:-25 120:-16
name _ crown	48:16 97:-9
~ _ width	48:16 120:-9
crown _ #d	18:-22 38:-11 48:17 87:53 97:-10 116:23 120:-16
#d _ crown	48:32 84:-34 87:13
#n _ name	17:11 84:19
barb	87:94
wire ~	48:88 57:-9
tang depth	120:-13
defin _ ~	119:46 121:-10
mm _ depth	48:10
#d name	55:-13 84:31 119:-9
width _ name	84:9
name $	14:41 26:19 60:11
defin a	84:15 119:8
a _ wire	48:11 123:16
wire call	48:44 57:-8 123:16
call ~	48:34 57:20 60:38 97:21
new _ call	48:26 57:-9 84:16 97:13 123:13
wire _ ~	48:40 120:11
defin _ wire	48:22
a wire	48:50 87:-12
deep==	2:-11 4:-11 18:79 73:83 76:-9 87:33 90:15
thick==	87:31
#d high	48:20 84:-16 87:17
high crown	48:22 84:-22
mm wide	3:-11 16:11 18:22 48:20 75:14 84:-16 87:23
wide crown	48:66 84:-66
crown #n	3:-10 16:12 48:10 84:-13 87:9 89:12
deep	2:-11 4:-11 18:79 73:83 76:-9 87:33 90:15
mm high	8:36 48:9 84:-13 87:19
mm deep	73:31 87:9
thick	87:31
#d thick	87:16
crown _ high	48:12 84:-13
high _ #d	48:21 84:-19
mm _ crown	48:39 84:-34
wide _ #n	48:9 75:8 84:-9 123:18
#n _ wide	3:-10 16:12 48:12 73:21 75:14 84:13 87:15
wide _ #d	18:23 48:55 73:8 84:-56
in _ crown	48:18 84:-19 87:12
#d _ high	8:36 87:18
#d _ deep	18:11 73:16 87:19
wire _ crown	87:18
a _ call	57:8 73:9 97:18 98:-8 119:9 123:23
#d deep	2:-10 73:52 87:12
tang _ deep	18:18
~ #d	84:16
call _ #d	68:14
#n _ deep	18:25 73:16
add kind	48:18
kind of	24:13 48:23 99:12
add _ wire	48:26
add _ ~	48:13 57:11 97:27 119:13 120:-18
of _ call	11:16
receiv==e	49:17 115:-12 123:11
form==	8:10 88:10 115:18 121:10
mass==	38:-8 48:-9 67:8 78:10 97:-16 115:11 119:31
receiv	19:18 20:15 31:-13 33:14 49:95 65:-14 66:-10 103:18 115:-24 116:69 118:-10 123:15
^ receiv	31:-12 49:97 65:-8 66:-10 115:-19 116:59 118:-8
each #d	49:17 65:14 81:-10 115:10
form	8:10 88:10 115:18 121:10
coil	2:-8 8:15 9:-10 20:-13 31:-11 38:-9 47:-8 49:77 65:-12 66:60 67:-10 69:-9 70:98 78:-11 100:10 115:50 116:8 120:13 123:38
#n count	40:-9 71:31 75:-13 84:-9 113:-9
#c count	71:8
mass	38:-8 48:-9 67:8 78:10 97:-16 115:11 119:31
@wire mass	67:8
mass #c	38:-8 48:-9 67:8 97:-16 115:11 119:31
g	1:-8 8:-11 20:-14 38:-19 49:25 50:-13 65:-29 66:134 67:130 97:-14 116:-9 119:30
#c g	20:-10 38:-12 49:36 65:-11 66:94 67:32 97:-13 115:9 119:30
wire _ each	7:10 38:-10 65:13
#d _ stick	48:11
stick _ @wire	31:30 38:-8 49:52 65:-16 66:20 78:-8 87:-10 115:23 123:38
count _ each	115:10
the _ count	65:-9 71:16 115:11
#c _ coil	115:9
count _ count	71:9 75:-9 81:8 84:-15
coil _ #c	49:-15 66:43 119:16 120:-16
wire _ mass	67:9
mass _ g	67:9 97:-13 119:23
#c _ each	65:9 116:10
g _ #d	67:24
tare==	49:22 66:17 67:-17 119:33
division==	54:16
tare	49:22 66:17 67:-17 119:33
tare #c	49:27 66:17 67:-17
gram	1:-8 20:-8 38:-16 42:11 49:11 65:-20 66:90 67:100 69:-9 115:11 119:17 120:15
#c gram	38:-9 49:17 65:-17 66:97 67:28 115:12 119:17 120:15
#n each	115:9
receiv _ #c	116:11
#d _ #c	46:15 52:32 67:12 80:8
tare _ gram	49:11 67:-13
#c _ wire	67:9
gram _ the	49:12
gram _ #n	67:18 119:18 120:-18
g _ @wire	65:-11 66:28
receiv==ed	19:19 20:16 31:-13 33:14 49:78 65:-12 66:-10 103:18 115:-12 116:69 118:-10
receiv #c	49:23
#c coil	49:18
coil of	31:-10 38:-8 49:104 65:-9 66:8 67:-13 78:-9 115:47 116:-8 123:34
coil _ the	49:58 66:-14 100:12 115:27 120:11
receiv #n	49:8 123:11
#n coil	49:14 115:16 116:12
coil _ @wire	49:45 66:20 67:-9 78:-8 115:21 123:36
#n stick	8:-10 17:16 31:22 38:-16 42:-9 44:-8 49:61 65:89 66:-10 67:-8 87:-13 115:32 116:37 117:-19 118:-8 119:44 120:23 123:30
got _ stick	49:20 65:-9
@wire #d	49:9 79:9 87:27
@wire _ each	49:12
got _ coil	49:24 66:-8
#d _ from	54:20 81:10
#c stick	65:42 116:18 120:15
receiv _ stick	49:9 123:10
the _ #d	37:14 69:-12 75:17 80:27 87:23
got #c	98:17
~ from	48:-15 49:11 55:-11 115:25 119:16
high from	88:18
#d from	75:19 79:10
~ _ mm	84:12
from _ for	19:21 49:8
each _ #n	6:11
$	49:19
$ #n	49:19
#n #d	35:-11 38:-9 39:-20 69:-23 80:71 81:76 91:18 123:16
$ _ for	49:8
@wire #n	65:25 116:12
yesterday #n	49:22 116:-9
#n _ from	1:-12 33:31 35:11 49:19 54:10 70:-30 77:37 98:10
unpack==ed	49:12
unpack	49:12
^ unpack	49:12
#c from	58:-15 59:51 110:12
#c for	58:20
this _ from	110:20
morn _ ~	100:9
yesterday for	70:14 71:15
#c #d	81:35
#c _ mm	80:9 81:23
#c @wire	49:14 115:12 116:-8
stick for	49:17
#d #n	37:12
got _ @wire	0:9 8:12 49:11
#c _ stick	49:12 115:17 116:-8
mm _ at	3:24
#n @wire	1:26 22:-11 38:15 49:121 65:-11 78:66 79:-10 115:18 116:-15 123:-8
receiv _ @wire	19:21 49:13 115:-10 123:9
each @day	51:27 53:-10
bought==	49:54 115:-12 123:45
bought	49:54 115:-12 123:45
^ bought	49:63 115:-12
bought #n	49:28 115:-9
@wire _ from	32:17
#c the	78:12
@wire _ at	116:17
at _ for	0:18 36:-14 92:11 104:17 106:30
for _ at	12:35 29:-8 34:12 50:10
stick $	8:-9 31:-13 32:8 48:9 65:46 66:15 70:14 115:38 117:-10 119:13 120:29
)~"
R"~(have come	19:10 44:14 49:25
@wire _ come	116:10
^ #c	31:-9 38:-11 59:19 65:-15 66:17 67:64 78:13 81:9 116:28 123:-9
@wire came	20:18 21:-14 49:49 66:-24 116:17
came $	49:22 116:71
here #d	1:10
#c _ from	59:20
#c _ in	54:11 65:24 81:18
arriv from	56:26
of _ arriv	31:33 49:18 65:-9
came in	20:19 21:-13 116:12
here _ in	54:14
stick arriv	49:9
@wire _ arriv	49:8 116:31
stick came	116:27
@wire _ came	49:10
^ delivery	19:33 49:18 65:-11 116:29
delivery _ #n	49:22 65:-10 72:25 116:9
of _ stick	65:-16 66:26 78:10 116:14 120:24
brought==	21:10 42:19 49:31 65:-14 116:18
^ ~	49:19 116:51 117:68 119:-8 120:44
brought	21:10 42:19 49:31 65:-14 116:18
~ brought	116:19
brought us	21:10
us #n	103:17 115:13 116:12
~ _ us	116:32
us _ coil	49:23 66:-8
brought #n	49:27 65:-13
brought _ stick	49:28 65:-13
~ deliver	49:12 116:28 117:30 119:-8 120:17
deliver _ stick	116:20
sent==	5:14 31:23 49:21 56:21 116:14
sent	5:14 31:23 49:21 56:21 116:14
deliver #n	116:26
morn for	104:11
#d _ this	40:11
deliver us	116:19
#t _ in	53:9
deliver _ #n	117:10
sent #n	49:26 116:9
sent _ stick	116:9
^ ther	0:-13 8:-22 22:-8 25:-17 57:8 65:45 68:10 78:9 81:15 86:20 88:13 89:48 90:21 93:10 95:-11 98:85 99:25 112:21 119:8 123:35
ther arriv	49:13 65:-9
arriv #n	116:11 117:-9
arriv _ stick	49:13 65:-9 116:9 117:-8
came _ stick	78:11
ther _ #c	98:24
rack==	8:27 38:24 65:16 78:9
^ took	39:-8 42:12 81:45 86:19 96:27
#n more	29:-8 30:56 49:51 55:8 84:10
more stick	49:10
rack	8:27 38:24 65:16 78:9
the rack	8:17 38:24 65:16 78:9
into _ rack	78:11
rack $	38:18
shelf==	8:47 56:20 65:30 109:-9
took #c	81:31
shelf	8:47 56:20 65:30 109:-9
shelf $	8:47 65:30
the stock	65:11
without==	5:14 8:-9 22:15 38:-8 49:8 51:22 64:17 78:16 116:-8 118:12
without	5:14 8:-9 22:15 38:-8 49:8 51:22 64:17 78:16 116:-8 118:12
without an	49:11
@wire _ without	49:11
without _ order	49:11
arriv without	49:8
arriv _ an	49:8
not order	49:26 115:-10 118:-11 121:24 123:9
@wire that	0:9 1:8 31:-11 38:-11 49:23 81:11 116:19
that was	1:9 21:8 37:11 38:-11 82:-13 83:19 116:30 122:9
of _ that	1:10 38:-10 64:13 81:11 82:9
@wire _ was	1:10 38:-10
that _ not	25:10 31:22 49:8 123:-11
@wire _ were	49:18
were _ order	49:18
a stick	38:10 49:-13 67:26
a coil	49:38 66:-20 115:15
receiv _ of	49:13
receiv coil	49:8
bought a	49:9 123:9
got _ of	8:-12 9:18 49:12 116:11
bought _ of	49:13
mm from	54:30 81:11
#t _ #n	43:9 104:9
coil==	8:16 9:-9 20:-11 47:-8 49:34 66:61 69:-8 70:79 78:-8 100:10 115:28 123:41
mm coil	49:10
#d _ coil	49:10
#n _ coil	49:16 70:14
receiv #d	49:13
receiv _ #n	116:15
bought #d	49:14
a #c	5:56 67:10 84:8
gram _ of	119:-8 120:8
g coil	115:8
g _ of	115:8
@wire yesterday	65:9
gram of	66:17
g of	65:-12 66:34 67:-10
g _ the	49:13 66:11 67:20
gram _ @wire	66:9
of _ g	66:9 119:11 120:-8
g $	49:12 65:-10 66:58 67:68 120:12
weigh==ing	49:32 66:-24 67:8 123:38
weigh	20:-8 38:-9 49:-13 66:84 67:74 123:52
@wire weigh	49:11 66:12 67:45
weigh #c	49:11 66:21 67:32
of _ weigh	49:11 67:28
weigh _ g	66:21 67:11
empty==	2:8 13:46 49:14 67:-9 76:17
empty	2:8 13:46 49:14 67:-9 76:17
empty #c	66:9
g _ #c	67:8 119:-8 120:8
spool==	37:14 49:36 64:27 66:39 67:-15 123:-9
spool	37:14 49:36 64:27 66:39 67:-15 123:-9
of _ gram	120:8
gram _ #c	49:11 66:9 67:-15 119:-12 120:15
#c _ tare	49:11 67:-10
tare _ g	49:19
gram tare	49:8
the _ weigh	67:21
weigh _ gram	67:44
gram $	38:-9 66:21 67:72 119:13 120:11
@wire _ weigh	66:9 123:47
^ coil	66:23
arriv weigh	49:9
arriv _ #c	49:9
reorder==	1:-8 8:-13 9:87 11:-10 17:-26 19:-9 24:9 33:12 50:130 98:13 123:16
reorder	1:-8 8:-13 9:87 11:-10 17:-26 19:-9 24:9 33:12 50:130 98:13 123:16
^ reorder	9:-23 50:98
reorder level	8:-9 9:32 17:-21 50:76 123:24
level wire	9:-17 50:24
reorder _ wire	9:-17 50:24
level _ @wire	8:-8 9:16 50:13 123:27
reorder the	50:9
reorder _ @wire	50:9
below==	15:-9 40:-8 50:80 71:-8 88:30 89:23 90:-8 91:111 119:9 123:-26
reorder @wire	9:16 50:19
below	15:-9 40:-8 50:80 71:-8 88:30 89:23 90:-8 91:111 119:9 123:-26
@wire below	50:9
below #n	50:25 88:15 91:11
reorder _ below	50:9
below _ mm	50:26 91:14
@wire under	9:-8 31:34
under #d	50:30
under _ in	50:14
reorder _ at	50:16
below #d	50:23 91:13
below _ in	50:9 91:13
^ tell	8:8 9:11 13:30 17:-9 23:12 34:21 50:18 55:39 123:33
tell me	1:13 6:8 8:14 9:11 13:27 14:14 23:10 25:8 34:9 50:18 123:39
me when	28:10 50:25
when the	16:8 28:9 46:12 50:11
is under	50:24 90:19
tell _ when	50:16
@wire _ under	50:41
^ say	50:15
say when	50:15
when @wire	50:28
when _ is	50:31 113:12
is below	50:29 123:-20
me _ @wire	8:37 50:52 123:-27
@wire _ below	50:18
under #n	50:41 88:24 89:62 91:-14 95:8 123:13
under _ mm	50:13
^ @wire	1:-16 5:58 7:11 8:78 9:31 11:-14 15:-11 16:-8 18:38 19:40 20:48 21:-16 23:9 24:45 28:-8 29:-16 30:-8 31:-9 32:-18 33:28 34:-9 37:-8 38:-9 39:-9 44:-8 45:-11 48:-29 49:-8 50:35 54:-8 65:34 66:52 67:-15 68:38 78:9 79:-9 80:-9 87:55 91:-19 107:-8 116:14 117:53 118:8 123:-21
is _ under	31:34
low _ #n	50:46 91:36
low below	50:19 91:-9
is _ below	50:8
low _ #d	50:28 91:36
low at	50:29 91:8
the reorder	9:22 50:8 68:10 123:26
reorder _ of	9:25 50:15 68:10
^ open	12:-8 13:40 28:15 29:-8 31:27 51:59 52:-15 53:72 108:-18 110:-12 111:75 123:-9
hour day	28:-8 51:10
open _ day	51:10
day _ to	51:10
to _ day	53:11
open @day	28:-10 51:33 52:11 53:9 108:-8 111:33
@day from	51:44 53:-25 108:21
open _ to	51:23
@day #r	16:-13 51:14 104:74 108:39 109:-16
to _ #r	74:14 123:20
@day #n	51:20 53:16 104:16 108:22 110:-13
@day _ to	51:40 100:9 104:15 108:14 110:-13
open _ #n	28:46 53:38 111:-11
we _ open	8:-17 12:40 51:16 53:35 108:20
are _ @day	95:9
open every	51:16
every @day	28:-12 51:55 53:-18
are _ every	51:12
from from	108:24
each _ to	51:10
@day _ from	51:24 108:29 110:-22
alway==s	51:71 52:-20 85:14 103:10 121:12
alway	51:71 52:-20 85:14 103:10 121:12
alway on	51:24 52:-9
are _ alway	51:8
open _ on	53:27
alway _ @day	51:67 52:-18
on every	28:-11 108:8
@day are	28:-15 51:51 53:-8 108:11
are #r	28:-25 53:24 108:13
hour _ every	51:8
every _ are	51:9
to _ are	43:24 51:18 69:9 88:-9
are from	51:8 53:18
of each	51:11
hour _ each	51:11
each _ are	49:13 51:11
for every	7:16
are #n	0:10 49:-10 53:9 65:23 73:15 97:14 98:17 108:12 120:10
^ on	0:-12 1:66 4:-8 11:-9 13:-12 16:-11 17:-17 18:-11 24:-8 26:11 27:8 31:26 40:-11 41:15 42:-17 44:20 51:14 53:19 68:15 73:26 74:9 77:-8 87:9 90:-10 91:13 92:18 106:81 107:-14 108:11 109:-9 112:-9 113:-8 115:16 116:-12 117:-9 123:-11
@day we	49:9 53:23 111:9
open from	51:22
to _ we	17:11
@day _ are	53:15
are _ from	70:20
^ every	51:9 53:-12 80:30
every _ we	51:13 53:-12
^ each	51:9 74:10
@day open	51:26 53:-11
to _ open	1:23 2:-10 5:10
on _ open	51:22
clos every	51:26
we _ clos	52:26 111:-8
clos _ @day	52:9 111:9 123:36
are shut	51:10 52:27 111:19
we _ shut	51:10 52:27 111:19
shut _ @day	51:8
^ clos	51:9 52:167 109:-10 110:-8 111:-26
clos alway	51:13 52:-8
clos _ on	51:13
clos day	52:23 111:11
begin==s	28:-13 53:-20 86:22 100:9 104:-8 110:44
december last	52:11
@day week	28:-8 46:28 51:-11 53:31 115:8 117:43
begin at	86:9 110:9
clos _ week	51:19 52:9
of _ last	52:11
next _ week	28:8
begin _ #t	110:9
^ shut	28:-12 52:112
shut the	52:15
shop for	61:8
shop _ @day	52:17 53:10
shut on	28:27 51:24 52:9 110:-10 111:12
clos the	52:28
shop on	111:9
clos _ shop	52:38
#r becaus	52:12
clos _ #r	52:17
on _ becaus	52:14
tomorrow becaus	52:11
@day becaus	52:14
next _ becaus	109:18 123:-10
shop is	28:-18 51:8 52:22 54:22 108:23 111:24 123:-8
is shut	52:31
shop _ shut	52:31
is clos	52:12
shop _ clos	52:13
today becaus	52:12 109:10
through @day	28:10 52:10 109:17
clos _ tomorrow	111:12
clos next	52:10 111:9 123:-8
@day through	28:15 52:9
shop _ next	111:15
shop @day	52:10
morn becaus	100:9
clos #r	111:14
even becaus	109:14
even _ ~	109:14
clos #o	111:12
clos _ of	52:8 111:21
clos this	52:25
clos _ even	52:13
this _ becaus	100:15
early==	5:10 22:-10 42:-34 49:8 52:9 108:8 109:-10 110:50 117:9 123:66
early	5:10 22:-10 42:-34 49:8 52:9 108:8 109:-10 110:50 117:9 123:66
early on	110:13
#n _ becaus	68:45
clos _ the	111:10
clos @day	51:40 52:-9 111:15 123:-12
december from	104:20
)~"
R"~(from at	52:16
#t on	100:26 108:-12 110:16
from _ #t	52:16 100:14
tomorrow from	108:-8 110:24
from _ hour	54:12
yesterday becaus	39:13
at _ becaus	100:11
close==s	52:16
close	52:16
shop close	52:16
the _ close	52:16
early _ @day	117:10
from yesterday	110:8
shop at	44:10
clos at	51:9 52:12
of _ rest	52:10
week becaus	123:-10
clos all	52:8
we will	48:9 51:10 52:17 53:9 85:10 98:-14 111:19 114:19 118:15 123:18
will not	22:8 37:22 47:13 49:-12 52:9 85:10 92:19 102:9 107:11 109:36 116:14 118:47 123:-61
not open	52:113 111:-38 123:-31
we _ not	28:-9 37:13 47:21 52:11 56:28 76:10 85:35 99:20 100:9 102:-9 111:27 113:8 121:22 123:-19
will _ open	51:8 52:18 53:-11
not _ next	52:33 109:12 111:-10 123:-26
not _ on	28:-10 52:21 100:11 108:23 109:26 110:-9 123:12
open _ today	111:28
open #r	52:9 53:15
not _ #r	111:13
open _ becaus	52:13
^ not	13:16 52:60 109:20 111:-10 112:9 123:-30
open _ #o	53:8
after==	0:29 5:-12 6:20 10:-8 11:-31 15:10 16:-25 17:-14 23:-8 24:24 26:-9 28:-17 29:-11 33:-10 35:-8 41:-9 42:-14 43:-19 46:-9 47:8 49:38 51:-11 52:13 53:-14 54:55 62:-10 63:-10 86:12 88:-12 92:53 96:-8 104:13 106:-13 107:-11 108:-12 109:-9 110:58 111:76 112:-13 113:150 114:25 116:-10 119:-8 120:8 123:29
after	0:29 5:-12 6:20 10:-8 11:-31 15:10 16:-25 17:-14 23:-8 24:24 26:-9 28:-17 29:-11 33:-10 35:-8 41:-9 42:-14 43:-19 46:-9 47:8 49:38 51:-11 52:13 53:-14 54:55 62:-10 63:-10 86:12 88:-12 92:53 96:-8 104:13 106:-13 107:-11 108:-12 109:-9 110:58 111:76 112:-13 113:150 114:25 116:-10 119:-8 120:8 123:29
after all	28:-14 47:15 49:40 51:-10 53:-11 86:16 108:-11 109:-8 110:64 111:80 113:-8 123:17
on _ after	24:10 110:11 111:14 123:-11
not _ @day	52:12 108:25 109:23 111:17 123:-22
@day after	108:-10 110:41 111:23 114:13 123:-19
next _ after	52:12 111:9 114:13 123:-13
@day _ all	108:-10 110:41 111:40 123:-17
all $	5:-9 9:17 11:-10 12:-14 13:18 14:11 16:13 17:17 19:25 23:-9 24:-26 25:-11 26:13 29:54 42:-15 44:-19 46:12 49:29 51:-10 53:-12 65:21 83:-9 100:-8 108:-12 109:-9 110:59 111:64 116:12 123:60
no work	28:-8 52:77 100:-11
no _ on	46:12 52:50 86:9 108:20
work _ @day	28:59 29:-20 108:13 109:-22 110:63 111:-10 123:-9
work today	25:22 52:8
no _ today	123:34
work _ becaus	52:15
work tomorrow	14:-14 28:42 109:13 110:12
no _ tomorrow	100:24
work _ #r	110:16
work _ tomorrow	101:11 110:9
^ tomorrow	52:25
tomorrow is	52:15
a clos	52:13 86:8
is _ clos	52:10 86:11 111:15
a _ day	109:9 111:25
holiday==	52:50 82:11 109:12 110:-8
^ #o	43:9 44:24 52:20 77:8 91:10 110:9 113:12
december is	52:13 111:30
holiday	52:49 82:11 109:30 110:-8
a holiday	52:14
december _ a	52:20
is _ holiday	52:13 109:13
holiday $	52:27 109:17
a day	52:37 107:45 112:8 123:-8
is _ day	52:39 109:-16 111:12 120:13
a _ off	0:21 1:8 52:39 120:10 123:-10
^ @day	51:91 108:-14 109:-10 110:16 111:60
@day is	51:9 52:17 111:22
@day _ a	30:10 53:-8 111:25
^ today	28:-11 29:68 53:11 61:28 110:20
extra==	51:-17 53:96 110:-8
extra	51:-17 53:96 110:-8
open extra	53:30
until #n	2:-9 44:10 51:10 53:8 70:10 80:10 88:11 108:11 114:8 117:12
hour #r	28:-8 110:15
until this	53:13
@day hour	51:17
@day only	53:8
~ hour	11:-9 54:28
tomorrow only	110:14
open _ only	53:9
until _ #t	114:11
until _ at	51:-10 53:20 110:12
at _ day	104:-9 110:14
until _ hour	53:10
hour _ day	110:13
of _ hour	14:12 28:-9 43:9 97:8 107:16
day _ hour	110:10
tomorrow _ from	110:9
until _ morn	53:13
#r _ from	53:17
day _ only	53:8
hour _ to	51:20
today _ from	53:22
extra day	53:15
to _ hour	103:25
#t _ @day	100:22 108:-13 110:13
open late	53:27
late on	110:8
today _ #n	110:8
open today	28:15 53:11
#r _ to	52:15
extra on	53:9
december #r	53:16
also==	1:9 2:24 14:12 28:-10 51:-20 53:46 58:11 115:17 116:-8 119:11
also	1:9 2:24 14:12 28:-10 51:-20 53:46 58:11 115:17 116:-8 119:11
are also	53:15
also open	51:-20 53:47
we _ also	53:15
also _ on	51:-18 53:30
^ also	1:10 51:-15 53:26
beside==s	28:25 53:11 66:21 67:-8
beside	28:25 53:11 66:21 67:-8
open beside	53:11
shop _ open	28:-14 51:8 53:13 108:23
#o #n	16:-8 35:12 43:8 44:32 64:10 71:-8
^ extra	53:50
extra open	53:27
extra _ on	53:26
open only	51:-13 53:23
only on	1:83 51:-10 53:8 106:-9 110:8 117:18
are _ only	51:-8 53:13
december #n	30:23 111:12
only _ @day	51:-9 53:8
only _ #n	1:-11 44:60 51:-8 96:11 108:-9 110:36
only from	5:11 53:9 110:24
are _ #r	81:22
only _ from	110:29
open the	13:45 28:24 52:9
only #n	1:-17 2:13 3:20 4:78 16:-9 38:10 53:-9 68:15 74:-8 84:10 88:-14 98:24 110:-10 116:12
december open	53:9
of _ open	12:29 53:9
next _ we	53:12
#o _ are	4:10
on _ we	53:22
december we	53:9 111:12
open #n	51:10
of _ we	50:13 53:9 111:12
december _ are	53:9 111:12
today open	53:19
are _ next	26:40 29:-21
open tomorrow	111:22
#n only	1:71 2:13 17:-10 53:8 113:20
to _ only	53:19 57:13 72:11
today are	28:-10 53:22
december are	53:12
december _ from	53:8
set==ting	54:57 98:43 103:-11
to ~	54:57 55:20 60:13 63:14 98:15
set _ to	54:23
gap	3:18 43:-8 46:-8 86:-10 88:47 89:197 90:16 91:-8 94:-8 96:-9
press_limit	54:8
press_limit to	54:8
press_limit _ ~	54:8
may be	2:8 42:20 83:11 101:20 109:-9 123:40
after press	11:-10 44:12 54:31
recheck _ be	54:20
done _ ~	54:20
on _ press	25:-19 29:46 54:11 98:10 105:9
recheck can	54:13
can be	42:19 54:11 101:9 105:49
can _ done	54:13
hour after	54:16
a _ can	86:8
~ _ after	11:-8 54:17
hour _ press	54:16 100:11
h==	11:-11 54:24
h	11:-11 54:24
~ h	11:-11 54:24
h on	54:8
a _ may	1:9 86:17
from _ h	54:8
within==	3:17 10:8 40:-8 54:11
within	3:17 10:8 40:-8 54:11
due within	54:11
within ~	54:11
h after	54:10
due _ ~	11:-19 54:32
h _ press	54:10
due after	11:-9 54:30
after ~	54:10
after _ h	54:10
is _ after	15:16 86:14
zone==	54:62
zone	54:62
the zone	54:15
zone is	54:39
is ~	54:79
zone _ ~	54:27
timezon==e	54:14
timezon	54:14
timezon is	54:14
our _ is	54:69 87:11
timezon _ ~	54:14
^ zone	54:13
our zone	54:16
^ time	22:16 27:29
time zone	54:18
is _ ~	54:23 60:40 120:12
setback	54:25
chang _ to	54:46 60:-9
recheck_due_h	54:9
recheck_due_h _ ~	54:9
the set	54:41 98:17 103:-10
set _ is	54:25
plat==e	12:30 16:-12 29:-15 43:-16 54:87 100:-12 104:21
read==s	54:32
plat	12:30 16:-12 29:-15 43:-16 54:87 100:-12 104:21
the plat	54:20
plat of	54:20
press read	54:11
read ~	54:16
plat _ the	54:31
press plat	16:-9 43:-14 54:57 123:8
plat _ ~	54:13
^ plat	54:11
plat is	54:9
the _ plat	123:9
press say	54:15
receiver==	34:10 55:82 56:204 84:-8 100:-8 123:-17
url==	55:34 84:-25
shap==e	55:31 84:-10
receiver	34:9 55:90 56:243 57:-8 84:-8 99:-9 100:-8 121:-8 123:-17
add receiver	55:59 56:-22
url	55:34 84:-25
url ~	55:34 84:-25
shap	55:31 84:-10
~ shap	55:10
text	55:9
~ want	55:15 84:-9
url _ shap	55:8
shap _ name	55:8
name _ want	55:12
~ url	55:25 84:-19
cloudevent	55:8
event	55:17
want _ name	7:16
name _ url	55:17 84:-13
url _ name	55:17 84:-13
receiver ~	55:28 56:52
a receiver	34:14 55:22
add _ receiver	34:14 55:22 56:-8
receiver _ with	55:24 56:-8
tell ~	55:38 56:60
tell _ at	55:40
send==	4:20 11:14 26:18 55:29 115:14
reminder==s	0:18 21:10 32:-8 33:-13 55:24 56:13 109:15 123:41
send	4:20 11:14 26:17 55:28 56:37 115:14
^ send	55:24
reminder	0:18 21:10 32:-8 33:-13 55:24 56:13 109:15 123:41
send reminder	55:24 56:13
reminder to	55:24 56:13
send _ to	55:24 56:13
reminder _ ~	55:24
to _ at	10:9 11:18 55:23 57:24 114:12 120:12 123:-9
drop receiver	56:14
~ receiver	56:15
drop _ receiver	56:8
receiver _ receiver	56:15
drop the	37:21 46:19 56:11 59:17 85:9 99:10 123:16
the receiver	56:77
drop _ ~	85:19 121:31
remov _ receiver	56:8
remov receiver	56:23
remov _ ~	56:21 85:12 121:35
tell==ing	56:62 112:20
^ stop	37:38 56:96 107:67 123:-10
stop tell	56:62
stop _ ~	56:62
role==	14:12 57:57 59:-8 60:47 63:-12 123:13
uid==	57:37 58:163 59:165 61:-8 63:-10 64:-17 110:-10 123:-11
new person	57:84
role	14:42 57:56 59:-8 60:47 63:-12 123:13
~ role	57:15
role look	57:10
uid	57:37 58:163 59:165 61:-8 63:-10 64:-17 110:-10 123:-11
uid #n	58:89 59:85 63:-8 64:-13 110:-8
new _ bench	57:18
~ _ look	57:22
role bench	57:14 60:20 63:-8
bench role	57:22 123:15
role lead	57:8
~ _ lead	57:12
role _ bench	14:30 57:12
lead _ ~	120:15
person ~	57:52
)~"
R"~(uid #c	57:36 58:42 59:70
#c bench	98:14
#c name	48:-12 119:12
person _ role	57:18
look $	44:9 57:51 60:36
lead $	57:53 60:43
add person	57:32
person call	57:27
add _ call	57:17
call _ with	57:16
with role	14:30
a person	57:38 60:-9 61:-11 62:26 64:17
add _ person	57:17
welcom==e	57:93
as==	0:-11 1:-22 2:8 3:-11 5:21 9:-20 10:9 11:-8 13:-15 15:-8 16:-8 17:15 20:-9 27:-14 29:-9 31:32 33:-14 37:-10 38:-9 39:-8 41:31 42:39 46:-10 47:-11 49:17 50:39 51:-16 52:-13 54:11 57:59 58:48 59:-20 60:-9 65:-11 72:8 76:9 77:-9 83:-10 86:-12 88:-11 90:-9 92:14 93:-8 94:30 97:49 98:32 99:21 101:11 102:-14 103:26 105:-10 106:19 107:-18 109:-18 110:42 111:26 112:43 113:-10 117:-8 120:12 122:-8
welcom	57:93
^ welcom	57:93
welcom ~	57:93
as	0:-11 1:-22 2:8 3:-11 5:21 9:-20 10:9 11:-8 13:-15 15:-8 16:-8 17:15 20:-9 27:-14 29:-9 31:32 33:-14 37:-10 38:-9 39:-8 41:31 42:39 46:-10 47:-11 49:17 50:39 51:-16 52:-13 54:11 57:59 58:48 59:-20 60:-9 65:-11 72:8 76:9 77:-9 83:-10 86:-12 88:-11 90:-9 92:14 93:-8 94:30 97:49 98:32 99:21 101:11 102:-14 103:26 105:-10 106:19 107:-18 109:-18 110:42 111:26 112:43 113:-10 117:-8 120:12 122:-8
~ as	57:25
welcom _ as	57:25
as look	57:12
as lead	57:8
at _ ~	57:11 60:30
welcom _ at	57:12
map==	58:55 59:-14
map	58:55 59:-14
^ map	58:55 59:-14
map uid	58:55 59:-14
map _ uid	58:10 59:-8
#n uid	58:8 59:-8
uid _ uid	58:9 59:-9
^ uid	58:24 59:56 64:-13
uid _ is	58:27 59:35 64:-12
#c is	58:55 59:20 72:17 100:22 101:-10
#c _ @person	58:72 59:40
to @person	15:8 51:-8 58:39 62:-8 63:90 123:13
map _ #n	58:18
uid _ to	58:20
has uid	58:22 59:-8
@person _ uid	58:52 59:-12
is uid	58:30
has _ #c	58:12
in as	58:34
as uid	58:31
come _ as	58:18
in _ uid	58:33
as _ #n	30:10 58:15
as _ #c	58:27
unmap==	58:-9 59:101
unmap	58:-9 59:101
^ unmap	58:-9 59:101
unmap uid	58:-8 59:52
uid $	58:25 59:12
unmap _ #c	59:8
unmap _ #n	59:23
is nobody	58:-11 59:47 64:56 112:-8
#n _ nobody	59:40 64:29
#c _ nobody	58:-8 59:30
nobody $	58:-11 59:41 64:66 68:16 112:-8
take uid	58:-15 59:62
#c away	59:25
uid _ away	59:22
forget==	16:-9 43:14 52:-10 59:40 83:13 85:25 103:9 111:15 121:31 122:12 123:-8
forget	16:-9 43:14 52:-10 59:40 83:13 85:25 103:9 111:15 121:31 122:12 123:-8
^ forget	59:26 83:13 85:16 103:10 121:32
forget uid	59:26
chang person	60:45
person person	60:9 62:11
@person name	60:8 105:9
@person role	60:20
chang _ person	60:11
person _ @person	58:9 60:9 62:11
person _ name	60:8
name _ person	60:8
make @person	60:77 109:15
@person a	29:15 60:42
a bench	60:13 64:21 78:16 102:57 104:17 123:-14
make _ a	57:13 60:22
@person lead	60:28
make _ lead	60:23
look now	60:23
is _ look	114:12
a _ now	60:25 95:10
a lead	57:43 60:27
lead now	60:28
is lead	60:13
@person _ lead	60:39
is _ now	42:23 60:18 77:11 102:13
renam==e	9:-9 32:-11 54:-9 60:55 98:72 120:34
renam	9:-9 32:-11 54:-9 60:55 98:72 120:34
^ renam	9:-9 32:-11 54:-9 60:55 98:72 120:34
renam @person	60:57
@person to	60:71 62:25 63:-8
renam _ to	60:57
@person _ call	60:41
~ now	119:42
~ _ now	119:18
work _ bench	60:20
retir==e	14:-15 61:127 62:14 85:11 120:9
^ retir	14:-12 61:115 62:-14
retir person	14:-11 61:48
@person _ retir	61:30
has left	14:31 61:19 62:8
for good	61:26 85:25 92:11 99:23
@person _ left	61:23
left _ good	61:13
@person left	61:60 62:-20
left us	61:27
@person _ us	61:15 62:29
us for	60:11
is gone	61:35 62:-12 76:33 85:21
@person _ gone	61:33 62:-13 105:12 109:-8
gone $	56:25 61:30 76:29 121:22
@person doe	15:-9 28:-12 60:-8 61:24 62:-8 63:71 108:44
doe not	28:-11 41:10 47:8 61:31 64:-12 72:-21 88:43 90:8 99:10 100:21 103:14 105:15 108:14 109:10 110:-9 113:25
not work	28:-15 52:-8 61:31 100:21 108:36 109:35 110:-11 123:-19
here any	61:41 99:31 108:-13
@person _ not	61:17 108:23 109:64 110:-14 123:9
not _ here	61:41 108:-19 109:17
work _ any	61:41 108:-13
here _ more	61:41 108:-13
retir @person	61:47 62:45
return==	62:75
return	60:-9 61:-14 62:100 63:-9 64:26 123:-11
^ return	62:75
return person	62:54
return _ person	62:18
is back	25:-19 62:39 100:22 101:72 123:-8
@person _ back	62:44 101:-8
here again	62:42 108:-8
@person _ here	61:-10 62:37 108:29 109:-10 110:11
work _ again	62:41 101:8 108:-8
has come	5:10 22:-10 57:9 62:38 116:52
come back	25:29 29:-8 62:38
@person _ come	58:10 62:27 108:30 109:-12 110:-10
has _ back	62:39
give job	63:34 112:22 114:12 123:17
@job bench	63:9
#n bench	98:82
job _ bench	63:14
give _ @job	63:15 114:15
give _ #n	63:9 112:23 114:12 123:19
give the	63:11 103:18 114:15 119:18
give @job	63:19
give _ to	15:10 39:12 63:34 82:-8 83:14
to _ ~	63:22
to _ bench	63:15 64:22 123:-11
to bench	63:12
to me	12:10 13:-9 34:16 38:12 63:32 88:29
@job _ me	36:10 63:20 69:-10
#n _ me	63:13 80:19
@job goe	63:14 113:19
goe to	63:38
goe _ @person	63:14
job _ goe	63:20 92:30 112:9
goe _ ~	63:12
is mine	63:73 104:30
#n _ mine	63:53
@job _ mine	63:21
@person build	63:37
build job	63:18
build _ #n	63:18
build @job	15:10 63:11
myself==	34:9 63:71 104:8 123:-8
myself	34:9 63:71 104:8 123:-8
@job myself	63:34
the _ myself	63:12
myself $	63:71
#n myself	63:37
job _ myself	63:37
do _ myself	63:22
free job	64:78
free _ job	64:23
free _ @job	64:12
nobody doe	15:-8 64:69
nobody _ job	64:46
nobody _ @job	64:21
@job _ nobody	64:47
free again	37:19 64:17 83:12
#n _ free	23:46 64:32 86:11
@job _ free	64:47
from everybody	64:35
@job _ everybody	64:37
everybody $	64:60
take job	47:20 63:31 64:24
off everybody	64:26
job _ off	64:25
#n _ everybody	64:23
take @job	64:37
take _ from	64:16
@job off	17:8 47:44 64:19 70:11 114:10
take _ off	56:13 64:25 85:9 99:24 121:10
^ count	49:-28 65:112
count _ @wire	8:10 65:37
@wire _ this	20:14 49:12
note==	17:-8 35:8 52:13 58:20 75:10 86:10 94:10 96:10 104:21 107:24 109:15 120:11
stick #c	49:-19 65:19
note	17:-8 35:8 52:13 56:39 58:19 75:10 86:9 94:10 96:10 104:21 107:23 109:14 120:11 121:-8
stick _ stick	49:-10 65:10
stick _ wire	49:-19 65:19
wire _ at	8:23
at _ wire	8:10
@wire _ yesterday	49:15
count _ stick	49:-18 65:31
count==ed	8:8 49:-23 65:81
count #d	65:31
count _ mm	65:16
count _ in	65:18
ther is	0:-14 5:8 8:-9 13:-8 25:-14 29:-8 46:10 49:-10 50:14 65:11 66:25 67:-8 86:21 88:16 89:31 90:15 93:12 97:41 98:34 99:25 107:16 112:17 123:29
is only	3:12 41:12 50:10 56:11 65:11 68:17 75:10 87:11 110:10
only #d	3:-9 41:20 65:37 75:11 87:10
ther _ only	65:19
only _ of	65:22 116:11 120:9
the shelf	8:48 65:31
on _ shelf	8:48 65:31
ther are	8:-12 49:-10 65:52 98:57
are _ mm	67:13 73:14 87:11
only _ mm	3:-9 65:15 68:18 75:11 87:11
of _ left	65:10 98:12
are #c	65:8 120:10
are _ stick	49:-8 65:21 120:12
only _ stick	65:13
is _ stick	17:19 38:11 49:8 65:8 87:-9
have only	5:9 65:20
have _ #n	1:-10 5:9 15:19 38:11 50:9 98:27 123:-14
have _ stick	65:19
only #c	5:-9 16:41 68:20
have _ #c	54:20 98:16
stocktak==e	49:-11 65:44
stocktak	49:-16 52:26 65:56
^ stocktak	49:-16 65:57
stocktak of	65:19
stocktak _ the	65:9
stocktak _ @wire	65:25
stocktak the	65:15
@wire #c	49:-11 65:11 115:10
weigh==	49:-9 66:48 67:16 123:16
^ weigh	49:-15 66:72 67:-18
beside #n	66:10
weigh _ #c	49:13
mass _ gram	115:11 119:8
beside _ mm	66:12
the _ form	8:11
stick _ #c	48:21 49:-8 65:16 66:17 115:-8 116:10 119:-11 120:9
weigh==s	49:-13 66:32 67:40
@wire coil	49:-19 66:58 123:8
coil weigh	66:9
the _ coil	49:-11 66:28 123:8
gram beside	66:8
#c _ beside	66:19
@wire spool	66:10
spool is	49:23 66:-12
g and	66:9
beside #d	66:11
the _ spool	49:20 64:27 123:-8
@wire _ is	8:15 38:-12 68:8 87:37 118:22 123:14
spool _ #c	49:8 66:8
is _ gram	66:14 67:16 120:8
#c _ and	66:9 67:10
and _ #d	40:12
spool weigh	66:8
roll==	49:10 66:20 122:10
roll	49:10 66:20 122:10
@wire roll	66:15
the _ roll	66:23
gram _ #d	67:15
@wire _ are	8:-14 9:36 22:12 81:11 87:12
stick weigh	66:9
g with	49:18 66:-8
with its	49:16
its spool	49:17
spool of	49:11
g _ its	49:17
with _ spool	49:29 66:-9
on its	2:-10 5:12 31:29
on a	27:38 30:-8 51:8 96:11 113:11
a spool	49:10
g on	67:22
the spool	37:15 49:11 66:-9
weigh==ed	49:-22 66:29 67:10
bare==	54:30 66:14 86:13
bare	54:30 66:14 86:13
bare $	86:8
is _ g	65:-10 66:13 67:28
spool $	37:14 49:-13 64:27 66:32 123:-8
without a	51:22 64:17
)~"
R"~(roll of	49:11
roll _ the	66:12
^ stick	1:8 66:17 70:25 72:17
the coil	8:20 49:-14 67:10 70:64 123:36
roll _ @wire	49:11
weigh @wire	66:13
weigh the	49:-11 66:21 123:9
weigh _ @wire	49:-10 66:23 123:9
weigh _ at	66:23
at _ gram	66:17
left _ #c	38:9 66:12
g beside	66:11
g _ #n	119:16 120:-13
show #c	66:18
show _ gram	66:16
come to	2:-9 10:16 17:9 19:9 40:10 57:10 65:16 66:15 67:11 79:8 87:27
the scal	49:11 66:41 67:19
on _ scal	66:58 67:12
show _ g	66:14
to _ g	67:22
^ scal	66:10
scal show	66:13
scal _ #c	66:11
for _ coil	66:9
say #c	49:9 54:28 58:20
say _ gram	49:9
scal read	49:11
read #c	66:9
laid==	11:-8 16:-8 17:8 23:46 81:-8 82:15 88:54
laid	11:-8 16:-8 17:8 23:46 81:-8 82:15 88:54
scal #c	45:21 84:-8
scal _ g	66:13
laid the	88:22
put _ @wire	66:20
put @wire	18:18 68:14
put _ on	38:9 49:11 57:15 63:44 66:-12
calibrat==e	66:-13 67:91 103:13
calibrat	66:-13 67:91 103:13
^ calibrat	66:-13 67:91
calibrat _ #d	67:11
yesterday _ the	65:11 69:13 71:14
#c _ length	67:14 84:9
mm _ #c	67:21 80:8 120:8
#c _ are	52:32 65:-8 67:23
g is	67:22
#c _ is	67:36
gram make	67:15
#c _ make	67:15
gram is	67:15
calibrat @wire	67:27
calibrat the	67:13
mm weigh	67:12
calibrat _ @wire	67:13
#d _ weigh	67:12
with _ at	63:10 67:9
in weigh	67:8
#n _ weigh	67:9
correct==	39:-8 68:140 123:15
correct	39:-8 68:140 123:15
^ correct	68:106
#d by	73:30
wire _ to	9:19
mm by	84:22 87:10
correct _ @wire	68:11
piec _ to	36:10 68:23
correct the	68:25
mm becaus	68:24
to _ becaus	23:23
in becaus	68:16
#d _ becaus	39:-9 68:25 80:13
correct @wire	68:10
correct _ to	68:12
correct _ #d	68:9
correct #d	68:10
correct _ #n	68:35
number _ to	36:13
number _ by	39:10
from piec	1:8 69:26
cut _ #d	69:12
from _ slot	4:-9 74:20
cut slot	69:23 70:15
@job out	35:11 46:17 69:13 94:11
cut _ #o	41:14
@job _ piece	81:11
#n up	4:28 17:-8 35:-11 69:27 81:-11 90:38 106:37
up _ the	0:17 11:42 24:11 29:-12 82:12 93:10 105:11
cut #n	5:-9 6:10 69:10 70:-10 77:33 123:-8
into #n	35:23 74:23 88:-8 95:12
cut #d	69:14 73:18
up _ slot	69:16
@wire up	66:8 68:14
of _ up	66:8
make slot	69:28 77:22
make _ #n	35:20 69:10 77:24 98:38 103:43 112:-14 123:11
^ made	38:-8 69:37 70:18 77:8 81:-8
made slot	69:38 70:-10 77:15 81:-8
made _ slot	81:11
made _ the	42:9 60:8 69:18 77:25 96:9
made _ #n	41:12 69:15 70:25 81:-9
cut new	0:11 5:-10 70:42
from coil	70:19
coil job	70:14
stick job	2:-8 70:29 71:-8
@job stick	70:12
yesterday job	72:8
new _ #n	3:-12 45:10 70:10 77:10
slot _ stick	70:11
stick _ slot	70:13
coil _ @job	70:9
#r stick	70:8
@job lot	72:8
new _ the	70:16 77:8 84:9
lot _ job	70:8 72:42
the new	71:20 97:28
new stick	70:24
of new	21:12 70:37 123:-11
the _ out	25:10 81:12 100:-8
out _ new	70:26 77:-10
from new	5:-14 69:-9 77:37
have _ slot	70:8
the stick	38:11 69:10 116:10
#n _ new	45:-11 46:31 70:19 77:17
of stick	5:10 22:-9 38:9
out _ stick	5:10 22:-9
off a	5:56 28:8 70:11
coil $	8:20 70:66 120:10
from a	70:16
out _ a	70:9 79:12
of _ coil	119:-14 120:18
off _ coil	70:62
stick _ of	38:12 69:9 78:20 116:9
#n _ lot	72:38
off _ #c	5:57
is _ from	72:13 86:25 108:-8 109:12 110:12
cut off	56:16 67:11 70:15
are _ off	52:11
cut out	70:9
are _ out	5:10 8:38 9:-15 22:-11
a _ stick	69:-10 70:14
cut _ new	5:-10 77:18
#n were	5:11 24:11 33:-8 35:-12 70:10 81:13 88:-11 95:10 96:30 116:11 123:11
job _ were	5:11 24:11 70:11 95:11 96:14
were _ cut	70:9
#n was	0:-12 3:-10 35:10 39:10 43:8 44:8 76:37 77:11 91:11 94:29 96:12 106:-12 107:16 123:-8
was all	72:18 116:31
job _ was	35:-8 40:9 43:17 76:25 94:20 96:10 106:-12 107:16 123:-8
@job was	17:-8 70:12 72:18 96:13
was cut	70:13
@job count	71:26 75:-9 91:-9
job _ count	71:37 75:-16
old==	2:-13 3:-25 14:8 22:19 27:8 31:16 39:16 40:-19 42:29 45:-10 54:8 71:32 77:120 81:-9 90:13 91:-12 92:-10 94:-8 119:10 123:11
pull #c	71:9
old	2:-13 3:-25 14:8 22:19 27:8 31:16 39:16 40:-19 42:29 45:-10 54:8 71:32 77:120 81:-9 90:13 91:-12 92:-10 94:-8 119:10 123:11
#c old	71:9
old fret	2:-9 42:39 71:26 77:-10 123:21
pull _ old	27:10 71:18
old _ of	71:15
fret from	4:-8 72:16 74:16 123:21
job _ into	71:19 74:19
#n old	3:-10 40:-13 42:-8 71:28 77:35
@job into	71:8
from @job	71:19
pull slot	0:-12 71:46
pull _ #n	0:-9 71:72 94:13
and _ out	69:11 71:28
#d _ out	81:9
out _ job	71:17
@wire _ of	81:8
lot _ #n	72:8
yesterday _ job	72:15
fret==ted	72:33
with lot	72:22
fret _ lot	72:30
fret job	33:-9 40:-8 42:-10 72:16 92:41 106:17
@job _ lot	72:29
use _ #c	72:9 100:10
take lot	72:29
is for	1:-10 36:24 39:14 72:30 80:26
lot _ is	72:30
size==	4:-18 32:12 73:68 87:27
size	4:-18 7:15 9:-11 32:43 73:68 87:27
slot size	4:-17 73:69
#n bottom	90:10
#d _ width	87:10
morn slot	95:12
#d _ depth	48:9
width _ job	3:-8 73:9 75:44
at _ slot	75:11 95:12 96:10
this _ slot	95:12
size @job	4:-13 73:34
wide and	18:28 48:8
and #d	2:15 3:-8 18:22 38:37 41:-9 48:18 71:32 78:-9 81:-9 87:8
and _ mm	2:-9 5:10 18:10 45:10 48:15 71:27 79:12 81:-8 84:13 87:-12
deep $	2:-10 18:-9 73:65 87:23
are _ deep	73:16
has _ #d	73:11
has _ of	73:11
mm _ and	18:14 48:16 84:10
slot _ wide	73:12
in with	43:11 58:11 73:8
a curv	73:22
curv bottom	73:13
#d _ with	73:28
in _ a	73:8
a _ bottom	73:15
bottom $	18:20 73:21 90:80
flat bottom	18:17 73:9
with _ bottom	73:20
#d with	3:9 84:8
shift==ed	2:-17 40:-11 44:-12 60:13 74:161 88:-11
one==s	0:30 1:-8 2:22 4:-8 9:-12 12:39 14:17 16:-10 17:35 22:67 31:48 32:-8 35:-9 39:-24 44:-25 49:11 61:8 69:-11 70:13 71:-12 74:78 80:45 81:46 88:-27 96:-15 111:-8
short one	43:-9 44:-19 74:75 88:-23 96:-12 123:26
one slot	74:10
one #r	44:-11 74:31 88:-8
from _ short	74:9
one _ #n	44:-11 74:39 81:-8 88:-9 95:8 96:-9 110:8
@job _ one	74:25 88:-13
one fret	44:-8 74:23 96:-9
#n _ one	43:10 44:-19 49:12 74:36 80:13 81:19 88:-8
short _ fret	41:13 44:-9 74:23 96:-9
i mov	74:53
mov fret	74:51
mov _ fret	74:25
^ mov	74:61 81:-12 96:-8
mov _ slot	74:19
mov _ #n	117:32
shift fret	74:13
and put	71:-9 94:37
shift _ #r	53:9
and _ and	38:8 69:34 71:11 74:-14
#n _ put	94:20
#o and	4:8 11:15 20:11 33:-11 44:11 46:-10 69:11 94:11
and _ in	0:-9 35:36 54:18 69:10 71:8 94:20 123:-8
shift _ slot	74:18
and _ went	4:-8 74:11 81:12
slot _ fret	71:-8 90:18 106:14
^ board	42:49 75:64 86:18 106:-8
board width	75:62
width job	75:45
@job width	75:13
#n width	3:-13 73:-8 75:30
morn _ the	52:31
the _ width	3:-9 75:15
job _ width	73:-8 75:23
mm width	84:9
width _ #n	45:10 73:-8 75:33
#n measure	40:17 123:44
wide at	75:43
job _ measure	40:17 123:44
at _ and	13:13 44:8 51:9 52:9 71:11 75:8 88:-10
at #r	44:15 91:13
in _ at	25:10
measure _ at	75:18
is _ wide	75:23 87:9
wide _ the	8:26 75:26
at nut	75:13
nut $	75:32
the nut	0:12 2:11 4:35 33:-12 35:10 45:19 71:-8 75:32 86:32
at _ nut	45:19 75:24 88:9
in _ nut	75:11
^ width	75:24
width of	75:36 87:22
at _ is	75:10 120:15
the width	45:10 75:13
width _ the	13:45 86:-8
width _ @job	75:20
board _ of	75:9
board is	75:15 86:30 102:30
board _ #d	3:10 75:21
lost==	17:-8 33:35 40:-9 76:144
lost	17:-8 33:35 40:-9 76:144
^ lost	76:99
lost job	76:18
lost _ #n	76:47
yesterday _ #n	42:19 75:-9
spoilt==	17:-9 76:82 85:11
spoilt	17:-9 76:82 85:11
^ spoilt	76:28
spoilt fret	76:8
spoilt _ #n	76:13
lost slot	76:10
lost _ fret	76:9
ruin==ed	76:96 80:19 90:9
ruin	76:96 80:19 90:9
^ ruin	76:51
slot _ becaus	76:16
spoilt slot	76:20
spoil==ed	76:63
spoil	76:63
is spoil	76:25
#n _ spoil	76:11
spoil $	76:30
slot _ was	74:8 76:8 77:8
#n _ lost	33:40
lost $	33:39 76:47
is lost	76:23
is _ becaus	118:16
been lost	33:40 76:-18
#n _ been	4:-11 35:12 43:9 74:21 76:11 80:10 107:26
got spoilt	76:9
#n _ spoilt	76:44
spoilt $	76:15
and _ was	17:-9 33:10 116:19
damag==ed	76:30
damag	76:30
was damag	76:30
#n _ damag	76:30
is ruin	76:23
ruin $	76:27
i drop	38:18
and we	120:12
can not	23:13 24:9 64:15 76:51 80:10 90:29 100:56 108:9 109:27 118:10 123:-43
not find	76:54 90:40 123:-13
find it	76:21
#n _ we	5:10 98:-13 123:31
and _ can	3:11 120:12
can _ find	34:17 76:55 90:23 123:-13
not _ it	1:-10 39:-10 47:18 64:11 68:23 76:19 93:23 100:13 105:14 113:-8
lost fret	76:39
#n we	16:-9 46:14 114:15
#n _ can	64:11
@job _ not	37:19 47:-8 76:-8 86:41 90:9 123:24
and i	14:10 16:-12 38:-8 43:15 48:-10 65:10 76:10 82:11 87:10 96:15
)~"
R"~(of _ and	0:10 1:-10 5:9 22:-9 29:17 40:13 69:10 89:11
i _ not	3:15 4:8 23:12 24:9 30:-8 32:-11 64:14 71:8 76:25 80:10 81:-10 83:11 100:15 102:9 105:25 106:-8 109:14 110:13 113:-8 118:-9 121:27 123:15
drop slot	76:9
#n i	0:34 3:10 44:18 69:10 71:14 81:12 88:-21 104:11 123:18
slot _ i	0:34
@job we	113:11
drop _ #n	13:-10 47:90 50:17 123:-8
@job _ can	107:20
#n can	34:13 37:10 101:12 105:13 112:12
fell==	57:11 76:47 110:12 111:-10
fell	57:11 76:47 110:12 111:-10
#n fell	76:30
fell down	76:16
and is	39:16 76:19 122:25
job _ fell	76:20
#n _ down	17:-10 44:-8 50:27 74:18 76:15 88:8 91:9 96:21 100:13
down _ is	88:8
and _ gone	76:15
down is	76:9
fell _ is	76:17
floor==	34:9 49:9 67:8 76:14 87:12 100:12
floor	34:9 49:9 67:8 76:14 87:12 100:12
the floor	76:15 87:12 100:12
fell _ the	76:23
on _ floor	76:15 100:12
down _ gone	76:8
fret _ fell	76:8
#r _ off	70:36 76:17
flew==	76:24
somewher==e	76:42 109:8
flew	76:24
flew off	76:17
somewher	76:42 109:8
off somewher	76:17
@job _ off	106:-11 107:18
flew _ somewher	76:24
somewher $	76:42
vanish==ed	76:39
vanish	76:39
has vanish	76:32
and _ has	5:10 14:18 22:-9 76:8 89:9 98:12
vanish $	76:20
vanish somewher	76:19
#o has	76:18
#o _ vanish	76:18
has _ somewher	76:12
i bent	39:10 76:10
bent fret	76:14
it _ ruin	76:16
ruin fret	76:23 90:18
slot _ it	1:22
brok==e	17:-8 38:-12 48:11 100:58 107:42 123:18
brok	17:-8 38:-12 48:11 100:58 107:42 123:18
^ brok	107:43
find fret	76:25
not _ fret	76:25
find _ #n	76:25
remad==e	0:-8 3:-13 40:-11 77:170 90:-10
remad	0:-8 3:-13 40:-11 77:170 90:-10
^ remad	3:-10 40:-10 77:119
remad _ #d	77:25
old length	3:-9 40:-8 77:27
@job old	42:34 71:-15 77:21
old tin	77:14
tin slot	77:10
old scrap	77:17
slot _ old	40:-12 77:26
old _ #d	3:-9 40:-8 77:27
the _ old	42:34 71:-15 77:9
@job _ length	3:-12 77:24
job _ old	3:-12 77:27
#n _ tin	2:17 77:17
old _ slot	77:12
dress _ #n	38:13
old _ job	40:-8 77:15
remad _ #n	77:34
length $	4:51 7:14 22:32
remad fret	77:15
remad _ slot	77:15
remad slot	77:44
remad _ the	77:15
make fret	35:26 69:-17 77:23
again _ #n	77:12 114:15
@job over	63:11 77:19
over at	77:19
over _ #d	77:19
#n over	16:16 38:-8 77:18
job _ over	16:16 38:-8 77:18
i made	3:10 33:8 42:9 44:13 64:13 69:-13 74:-9 76:8 77:14 81:33 91:-8 96:11
made new	77:10
new fret	0:-10 2:11 3:-8 70:-13 71:19 77:65
i _ new	0:10 7:9 34:14
cut a	1:13 70:-9 77:19 103:10
a _ fret	1:-11 70:-9 77:27
new _ slot	77:10
made a	64:14
made _ new	77:8
old one	0:9 27:10 77:18
tin _ #n	38:18 71:13
the old	2:-10 27:9 31:17 54:9 71:12 77:28 120:10 123:19
the _ one	0:8 22:50 27:9 31:44 39:-9 61:9 80:11 122:12 123:21
@job _ old	0:11
one is	77:9
old _ is	74:10
the scrap	80:30
one _ the	17:28
is _ scrap	0:-9 1:23
in _ scrap	39:11
goe the	85:14
of _ old	0:11
is _ bin	20:15
is remad	77:33
remad at	77:26
#n _ remad	77:24
was remad	77:17
was _ at	0:9 33:13 75:9 91:15 94:10 106:-11 107:17
remad $	77:47
@job _ remad	77:10
we _ new	77:8
handful==	2:-11 8:-11 22:-11 38:-47 40:-23 41:-11 49:-11 65:-9 74:-14 78:163 79:204 87:-11 123:46
handful	2:-11 8:-11 22:-11 38:-47 40:-23 41:-11 49:-11 65:-9 74:-14 78:163 79:204 87:-11 123:46
^ handful	74:-8 78:58 79:48
~ count	48:-9 84:-9 97:22
handful _ @wire	38:-14 41:-8 78:9 79:35 123:54
chuck another	78:8
another handful	78:27
handful of	38:-17 41:-9 78:70 79:52 123:47
chuck _ handful	78:25
handful _ #n	78:48 79:24
of _ piece	81:12
handful _ the	79:29
handful piece	78:10
threw _ handful	78:8
handful _ of	78:10
threw a	38:13
a handful	38:-12 41:-10 78:69 79:18 123:12
chuck a	78:17
@wire the	50:18
put _ handful	123:17
of short	0:22 78:18
short in	78:26
handful _ short	78:18
i chuck	78:11 80:25 81:-16
handful short	78:18
a _ short	41:35 78:13
short _ in	78:15
handful _ fret	78:8
the handful	2:-9 78:16 79:67 123:22
by _ handful	78:29
handful $	78:50 79:17
short _ into	41:11
chuck==	1:-11 39:83
bit==s	2:11 7:14 9:-12 21:8 22:95 23:18 78:41 80:10 81:8 82:17 123:-10
bit	0:80 1:12 2:9 3:11 7:12 8:8 9:-10 13:-12 17:-13 19:-8 20:-9 22:79 23:15 27:-10 34:10 35:-15 38:-25 41:-9 49:-8 65:-8 71:-9 78:37 80:8 82:11 86:-8 88:37 91:11
a _ bit	3:13 8:10 91:12
@wire short	78:41
short _ tin	78:15
toss==ed	39:20 78:14
toss	38:17 39:20
^ toss	38:17
of _ short	78:11 123:26
i toss	39:20
toss a	38:18 78:-8
short into	78:9
toss _ #n	38:17
about _ the	17:8 78:12
chuck #n	78:29 80:24 81:-16
chuck _ @wire	78:29
@wire bit	7:15 22:16 78:11 80:11
#n _ bit	1:10 5:10 38:-14
bit _ the	0:8 78:17 82:10
measur handful	79:28
handful _ #d	38:-11 79:52
length _ from	79:8
measur _ handful	79:28 123:9
handful #d	79:15
measur _ #d	3:12 40:14 74:-8 79:17
dress #d	3:10
measur that	79:11
that handful	79:11
that _ of	22:9 35:13 66:8 105:8
@wire _ dress	1:34 49:-13
handful is	38:-10 79:27
handful has	2:-8 79:22
mm out	81:11
of _ handful	79:21
measur _ of	40:21
#d out	79:12
measur _ out	79:12
mm _ a	73:9 87:10
several==	34:16 39:-9 80:30 81:52
several	34:16 39:-9 80:30 81:52
scrap several	39:-8 80:36
piece _ of	80:16
scrap #c	80:14
#c #n	80:10 81:14
mm one	80:19 81:41
one $	0:-8 2:25 14:18 17:14 22:49 39:-14 61:9 80:36 122:12 123:11
s==	39:-16 69:-17 80:65 81:97 123:46
the #c	80:9
s	39:-16 69:-17 80:65 81:97 123:46
#d s	39:-10 69:-16 80:40 81:64 123:47
#c _ s	81:8
s $	39:-11 80:58 81:-13
mm s	80:27 81:17
s of	80:15 81:26
#n _ s	39:-9 69:-12 80:59 81:10 123:16
s _ the	81:18
in s	81:16
#d _ s	81:27
s _ @wire	80:8
bin==ned	39:25
one becaus	39:-9 80:17
in one	39:-10 80:18
#d _ one	39:-11 69:-9 80:23 81:33
out all	80:15
throw _ all	80:16
scrap all	80:24
all _ #d	80:11 81:10 123:13
bin all	80:10
@wire bin	7:8 80:15
took _ #d	81:27
@wire _ them	80:11
them $	16:41 19:8 22:19 42:8 49:-9 65:9 73:9 78:8 80:15 95:10 97:29 116:19
@wire and	9:8 48:10 66:8 80:11 87:-10
and bin	80:11
@wire _ bin	80:11
took out	0:11 71:9 80:16
of tin	81:21
took _ #n	35:13 49:10 80:9 81:28 86:21 96:11
tin bin	80:9
in _ out	20:36
@wire _ scrap	39:-8 80:23
all #n	43:53 96:-8
#d piece	81:19
all _ piece	81:11
one of	81:21
use several	81:57
s in	123:18
s _ slot	123:18
in piece	81:19
piece for	38:-8 78:23 81:13 82:20
used #c	81:39
one _ @wire	81:14
one on	17:27 81:16
mm _ on	18:21 73:-9 81:17 91:8
took the	43:-9 81:16 86:8 96:24
used _ #d	0:-11 35:17 81:34 123:29
piece $	0:18 8:40 81:18
one out	27:10
mm _ out	80:-8 81:14
s out	81:10
the _ piece	8:18 82:19
the _ s	81:20 123:32
we _ #c	81:12 98:14
mm _ went	77:9
go into	18:13
go _ slot	0:12
s go	80:-12 81:19
s _ in	80:-12 81:41
asid _ at	82:15
asid job	82:11
asid everyth	82:11
everyth for	36:-10 72:17 74:-8 82:34 83:12
set _ everyth	82:11
asid _ for	23:-9 83:10
everyth _ @job	82:24
asid all	82:12
all for	0:19 36:-9 82:17
set _ all	82:27
everyth _ the	8:56 9:18 36:-10 72:18 74:-8 82:28
set it	54:20 82:15
all asid	82:19
it _ asid	82:19
set everyth	23:15
everyth asid	23:12 82:18 83:-10
set _ asid	23:27
everyth _ for	23:12 82:14
keep everyth	82:22
reserv everyth	82:14
everyth that	11:9 23:-8 82:18 83:28
reserv _ that	82:13
hold all	82:32 83:-14
it _ @job	82:10
everyth the	82:26
plan take	82:17
everyth _ plan	82:12
all that	82:28 83:10
that the	2:9 5:10 16:-8 17:-8 52:13 58:10 82:9 92:23 100:11 101:12 107:25 113:21 118:9 123:-8
plan use	82:15
that _ plan	82:19 83:-12
keep _ the	82:15
hold what	82:9
everyth _ is	83:13
that _ in	3:11 4:27 35:15 53:10
in _ plan	82:22
hold _ that	82:18 83:-11
all _ is	82:9 83:25
put everyth	82:28 83:-8
put _ asid	82:15
put it	23:9 35:32 36:29 38:13 49:10 63:10 66:-12 71:13 94:30 123:12
put _ all	82:30
@job asid	82:16
put _ for	23:47 83:27
the _ asid	82:19 123:33
put all	82:8
#n asid	33:15
everyth _ job	82:12 83:10
everyth job	82:8
everyth _ #n	82:8
reserv all	82:45
all wire	8:23 19:14 20:15 21:-10 31:16
wire _ #n	87:16 117:10 119:10
that job	47:30 72:10 82:28
that _ #n	0:-11 35:17 52:9 70:10 72:10 74:-8 76:20 82:24 92:-9 117:9 122:40 123:-9
wire that	49:11 82:12 87:-9
that @job	0:-12 3:8 13:20 27:18 35:8 63:19 75:18 82:18 112:19
all _ that	82:8
all piece	82:9
the piece	80:9 81:23 83:9
piece and	23:24 82:22
and wire	23:26 82:10
wire and	21:12 82:8 119:11
all _ and	10:9 23:-10 34:44 42:11
wire of	106:23
let all	37:-11 83:50
)~"
R"~(all go	20:8 37:-11 83:45
go _ @job	33:-9 44:14
go _ everyth	83:9
go _ all	83:34
that _ set	83:9
that _ held	83:18
let everyth	83:16
go for	83:13
go _ job	83:10
free everyth	83:14
free _ that	23:-15 83:25
releas==e	23:-19 37:72 63:-16 64:40 72:-12 82:-22 83:104 105:28 123:-10
releas	23:-19 37:72 63:-16 64:40 72:-12 82:-22 83:104 105:28 123:-10
^ releas	23:-19 37:58 63:-15 64:44 82:-20 83:55
releas everyth	82:-16 83:38
releas _ for	83:10
everyth set	82:-14 83:27
releas _ set	82:-14 83:27
everyth _ asid	82:-14 83:27
free all	23:-10 83:27 123:8
longer hold	83:20
hold anyth	83:41 123:-10
no _ hold	83:20
longer _ anyth	83:20
anyth _ job	83:30 123:47
longer set	83:14
asid anyth	83:14
no _ set	83:14 86:12
longer _ asid	83:14
set _ anyth	83:14
anyth _ @job	83:12
for _ any	37:30 76:12
not _ anyth	22:22 57:15 83:34 90:27 121:-8
free _ is	23:-34 83:50
sole==	45:-57 84:101 119:-13
rat==ing	55:-9 84:41
defin bar	84:45 85:-10
sole	45:-57 84:101 119:-13
mm sole	84:9
sole radius	45:-35 84:53 119:-13
rat	43:-8 45:-21 54:17 55:-9 84:74 85:-12
~ rat	84:16
rat #c	45:-10 55:-9 84:25
~ width	45:-9 55:-16 84:34 119:-9
~ sole	84:13
#d width	84:9
in sole	45:-11 84:11
bar _ #d	84:14
#d _ sole	45:-17 84:17
sole _ #n	45:-12 84:15
name _ rat	84:13
rat _ pound	45:-9 84:9
length _ name	84:13
name _ length	45:-16 55:-9 84:38 119:-13
name _ width	45:-9 55:-16 84:34 119:-9
sole _ #d	45:-24 84:38 119:-13
name _ sole	84:13
rat _ lb	84:13
#c _ sole	84:9
radius _ name	84:9 119:-9
in width	75:11
bar _ name	85:12
#c _ name	119:9
ladder==	84:19
ladder	84:19
ladder ~	84:16
bar _ rat	84:20
rat==ed	45:-15 54:17 84:34
narrow==	84:17
new bar	84:43
flat sole	45:-21 84:26
rat at	45:-11 84:12
sole flat	45:-17 84:20
narrow	84:17
a _ bar	84:31
rat _ #c	54:17 84:21
flat _ sole	45:-16 84:18
x==	38:12 73:11 84:24
bar call	84:19 85:13 123:23
x	38:12 73:11 84:24
mm x	84:10
x #n	38:12
#d _ x	84:8
x _ mm	38:12
sole _ flat	45:-9 84:9
x #d	73:11 84:10
rat for	54:17 84:19
defin _ bar	45:-10 84:18
for _ lb	54:17 84:19
defin the	45:-9 48:9 84:9
#d x	73:12
#c _ radius	84:9
narrow bar	84:14
with ladder	84:11
new _ bar	84:9
narrow _ ~	84:8
a narrow	84:10
defin _ narrow	84:10
^ bar	84:28 85:18
~ is	54:-8 84:18 120:92
bar _ is	84:15 85:19
mm _ rat	45:-9 84:17
drop bar	85:43
bar name	85:22
drop _ bar	85:15
remov bar	85:14
remov _ bar	85:15
do no	85:9 99:13 105:22
longer have	85:19 99:47
have bar	85:9
we _ no	85:9 99:21 100:8 105:9 121:13
do _ longer	85:9 99:13 105:22
no _ have	85:19 99:47
longer _ bar	85:9
have _ ~	85:9
i no	99:8
i _ longer	99:8
longer _ the	85:11
have _ bar	85:8 123:23
we no	99:10 121:27
we _ longer	99:10 121:27
support==	86:8
cradl==ed	86:44
bridge==s	86:74
head==	0:10 86:89 123:12
support	86:32
press support	86:8
cradl	16:12 86:115 93:-20
bridge	86:74
noth bridge	86:34
#n noth	89:19 90:15
@job noth	89:10 90:11
head	0:10 86:89 123:12
head clear	86:17
job _ noth	89:18 90:21
bridge _ job	86:10
the _ noth	90:8
cradl _ head	86:12
glue set	86:26
clear _ noth	86:11
body==	16:10 57:10 86:96 106:-10
body	16:10 57:10 86:96 106:-10
body from	86:8
in glue	95:19
#n _ set	82:12
taken out	71:15 94:11
lie==s	0:-16 3:14 8:15 20:-12 22:17 53:9 74:-8 77:9 86:20 88:29 91:22
bridg==ing	86:18
soft==	86:44
wood==	22:26 86:47 89:32
#n lie	91:23
bridg	86:18
head is	86:33
is clear	86:36
noth bridg	86:16
soft	86:44
wood	22:26 86:47 89:32
soft wood	86:41
job _ lie	91:11
#n _ cradl	86:10
head _ clear	86:29
is _ cradl	86:10
cradl $	86:62 93:-9
neck==	13:49 17:-10 29:-10 36:9 42:-8 47:29 69:-12 75:8 84:8 86:24 88:8 90:-9 93:232 103:20 106:-10
fresh==	44:9 70:9 74:-10 77:10 86:65 94:-9 123:-8
neck	8:-11 9:-10 12:60 13:47 15:-11 17:-11 24:-8 25:-10 29:-11 33:-8 36:8 42:-9 47:29 69:-12 75:8 84:8 86:23 90:-9 93:229 97:18 103:19 106:-11 107:-8 112:-8
the neck	13:28 16:9 84:9 93:58 123:9
neck of	13:26 16:10 93:55 123:8
@job lie	3:14
fresh	44:9 70:9 74:-10 77:10 86:65 94:-9 123:-8
fresh glue	86:19
neck _ @job	93:17
noth _ no	113:14
clear $	86:13
neck _ job	13:25 93:49 123:9
neck _ the	88:14 93:33
cradl==e	16:12 86:70 93:-17
the cradl	16:12 86:60 93:-12
#n _ taken	94:11
of _ cradl	86:39
longer cradl	86:8
no _ cradl	86:8
not cradl	86:8
^ head	86:29
head of	86:38
head _ the	86:12
the head	86:13
head _ @job	86:11
head _ job	86:15
touch==es	86:26
@job touch	86:16
the _ touch	86:10
touch $	86:25
#n touch	86:9
job _ touch	86:9
nut of	86:21
nut _ the	4:16 86:11
^ nut	13:39 86:59 107:-10
nut _ job	4:13 86:28
in plac	53:9 107:14
is _ plac	28:17
plac $	1:20 25:14 86:10
the glue	56:13 86:33 123:-14
glue of	86:27 123:-11
glue _ job	86:34 123:-12
has _ set	86:13
set $	54:29 86:35 103:17 123:-10
glue _ @job	86:29
glue on	86:28
^ glue	86:23 123:33
is now	11:-13 17:-10 35:14 46:14 63:22 95:14 120:18
on _ is	52:10 76:12 90:11 91:10 117:9
glue _ the	86:9 90:19 95:10
wet==	86:8
wet	86:8
is wet	86:8
wet $	86:8
still fresh	86:44
is _ fresh	86:44
fresh $	86:46
is soft	86:35
not set	86:12 123:-8
has not	31:21 46:-8 112:-10 113:-10 123:66
on _ has	77:25
dri==ed	47:27 97:33 98:-10 99:38 123:-13
dri	47:27 97:33 98:-10 99:38 123:-13
is _ dri	99:30
dri $	47:27 123:-11
^ fresh	86:14
fresh _ in	86:8
glue under	95:11
under _ @job	86:18
under job	86:38
under _ #n	86:38 88:17 89:-16
^ noth	43:-9 83:13 86:50 90:52 92:31 123:32
bridge @job	86:26
noth _ @job	86:17
bridge under	86:9
bridge the	86:24
noth _ the	86:17 89:18
bridge _ @job	86:24
bridge job	86:11
noth _ job	86:13
bridge _ #n	86:11
someth bridge	86:40
someth _ @job	86:17
someth _ the	0:12 33:23 86:20
^ body	86:37 106:-9
body of	86:17
body _ @job	86:10
the body	16:11
#n begin	104:-8 110:16
body _ job	16:10 86:29
begin _ #d	86:11
body _ the	86:34 106:-9
@job _ from	72:11 86:10
body under	86:33
a _ under	86:9 123:15
ther _ a	0:-18 1:13 57:10 78:14 88:23 97:8 119:9 123:12
is _ body	86:21
under @job	86:14
no clos	86:21
clos body	86:29
no _ body	86:21
body on	16:10 86:26 106:-9
#n after	0:44 6:10 106:-9 113:34 123:23
job _ after	106:-8 113:38 123:24
ther _ no	46:12 86:15 98:-9 99:29 100:9 112:24 123:16
no body	86:24
no _ for	36:66 100:13
no _ under	86:18 88:14 89:10
under it	86:10 89:24
has _ clos	86:12
body $	86:9
under _ board	86:20
noth under	86:23 89:10
unsupport==ed	86:27
unsupport	86:27
is unsupport	86:8
unsupport from	86:8
longer unsupport	86:11
no _ unsupport	86:11
unsupport $	86:19
not bare	86:8
is _ bare	86:8
not unsupport	86:8
is _ unsupport	86:8
support==ed	86:23
along==	2:43 13:18 17:30 43:-8 44:12 73:8 74:8 79:-10 84:9 86:8 88:49 121:24 123:-28
is support	86:9
along	2:43 13:18 17:30 43:-8 44:12 73:8 74:8 79:-10 84:9 86:8 88:49 121:24 123:-28
all along	2:10 86:10 123:-10
the _ board	86:26
along $	2:18 13:23
support to	86:16
to its	86:16
support _ its	86:16
support $	86:8
hollow==	84:22 85:58 86:58 99:-10 123:-10
hollow	84:22 85:58 86:76 99:-10 123:-11
is hollow	84:10 86:14
hollow from	85:8 86:12
@job _ hollow	86:8
void==	2:-10 5:12
void	2:-10 5:12 86:9
a hollow	86:9
hollow under	86:13
hollow _ the	86:12
hollow _ job	86:10
is _ hollow	86:19
no hollow	86:30
no _ in	64:13 77:-8 112:11
hollow on	86:10
hollow==s	86:17
on _ board	3:9 73:18 88:-9 89:41 106:14
@job after	24:10 113:41
hollow any	86:11
hollow _ more	86:11
not hollow	86:14
hollow $	85:18
wood $	86:32
is _ wood	86:35
hard==	16:26 24:13 103:-8 123:32
hard	16:26 24:13 103:-8 123:32
^ wire	8:26 9:83 19:21 20:41 48:-9 49:18 87:22 90:30 120:8 123:-8
wire size	87:28
@wire crown	18:-11 48:-17 87:34
#d crown	87:8
@wire tang	87:10
in crown	87:13
the _ crown	87:13
width _ crown	87:10
#d _ thickness	48:9
the crown	3:-11 8:18 9:-8 16:16 19:9 72:9 80:10 87:10 88:-11 89:52 103:10 107:8
crown of	8:25 87:11 89:23
crown _ the	3:-10 76:15 87:9 102:11 107:9
and _ high	87:9
wire _ #d	38:57 48:-13 87:34
^ crown	19:13 27:37 87:44 89:21 102:57
crown _ @wire	8:26
in _ and	21:10 54:16 71:-8 74:19 81:-9 122:25 123:-8
high and	17:35 96:14
and _ wide	84:22
crown _ of	19:15 87:34
width _ @wire	87:26
height of	19:16 49:9
height _ the	19:16
height _ @wire	87:10
the _ height	17:19
tang _ @wire	87:12
deep and	87:17
is _ deep	87:17 90:8
thick $	87:30
^ tang	87:33 90:28
mm thick	87:8
)~"
R"~(#n _ thick	87:8
barb==s	87:94
^ barb	87:8
barb of	87:17
barb _ the	87:15
the barb	87:76
barb _ @wire	87:30
has crown	87:8
@wire _ has	87:8
@wire _ crown	48:-16 87:42
@wire _ a	48:-10 49:17 87:14
has _ crown	48:-11 87:15
a _ #n	0:16 3:-10 40:-9 41:14 56:12 77:10 88:33 113:11
@wire measure	87:24
mm over	87:23
over the	28:11 87:31 88:10
#n _ over	87:9
over _ barb	87:37
barb $	87:29
wire measure	87:11
@wire _ measure	87:11
#d _ over	87:21
over its	86:8
its barb	87:11
felt==	74:-9 88:26
^ read	8:19 88:21
felt	74:-9 88:26
felt rock	88:12
#n felt	88:10
about #r	74:-8 88:14
held nutward	88:24
#n about	2:9 88:13 123:-9
job _ felt	74:-8 88:14
felt _ job	88:8
job _ about	2:9 88:8
#n _ steady	88:11
trebl _ #r	16:10
pivot	88:50
nutward to	2:17 74:9
pivot _ #n	88:19
job _ held	23:16
#n _ nutward	2:17 74:9
straight==	0:13 13:25 38:8 40:10 51:34 81:-8 88:18 93:110 123:19
^ of	2:-9 4:-8 8:14 13:14 16:-8 44:-10 86:-11 89:41 90:51 91:14 93:17 94:12 98:12 116:14
laid laid	88:8
laid _ laid	88:10
laid _ straightedg	88:12
laid _ straight	88:21
edge _ edge	75:19
is is	23:-10 88:45 90:-8
it it	88:9
it its	1:10
is are	88:19
is its	76:-9 92:37
it are	97:14
is _ it	15:29 29:-10 35:12 53:10 76:-9 88:10 90:10
it _ is	88:12
its _ is	76:8 84:10 86:25 90:26 100:29
is _ are	88:18
are _ is	88:20
rocker laid	88:15
sit==s	3:8 18:10 71:-9 74:10 88:45 91:36
sit	17:-10 18:18 27:-8 57:11 71:-9 74:17 81:10 88:43 89:8 90:16 91:49 123:-8
are sit	89:8
is sit	91:14
#n _ straightedg	88:9
straightedg _ fret	88:10
laid _ #n	88:15
stay==s	24:34 90:11 101:20
#n till	51:19 108:-8 110:10
#n _ edge	88:21
it lie	15:16
laid _ the	23:20 82:16
straight $	13:28 40:10 93:99
laid across	88:15
rocker _ across	88:15
thru==	91:19
thru	91:19
@job _ straight	93:9
^ for	0:10 4:-8 6:49 7:-10 9:18 11:-10 14:18 16:-17 17:-9 20:-11 21:9 30:-11 34:23 36:-24 42:-8 44:11 46:-9 50:16 63:19 70:11 83:-10 89:8 90:43 91:11 93:12 94:10 95:10 102:34 103:11 104:-12 123:-9
@job _ side	13:-11 16:52 17:-8
#n straight	13:37 93:-31
job _ straight	13:37 93:-31
it _ it	56:11 88:9 122:9
#n edge	3:11
#n _ straight	51:35 93:21
centrelin==e	88:8
center==	88:11
centr==e	88:11
centerlin==e	88:9
#n down	16:-9 43:72 44:-11 74:16 76:-9 91:51 96:63
down the	76:11 88:28
centrelin	88:8
center	88:11
centr	88:11
centerlin	88:9
along the	17:40 44:14 84:9 88:36 121:24 123:-16
and _ down	91:57
down _ middl	88:26
string==s	15:8
across the	40:17 48:8 79:8
line on	88:8
string	15:8
line _ the	88:9 91:11
down _ on	107:14
string _ the	15:8
across #n	88:16
edge along	17:-11 44:10
along _ middl	17:48 44:8
edge _ the	17:-13 44:10 93:11
on _ line	11:11 88:9
teeter	88:16
the _ along	2:12 17:-15 44:9 73:9
#n along	44:9
over #r	44:16
rock==ing	44:9 88:11
rock _ #n	44:40 74:-15 88:47
on _ down	96:12
line _ on	3:10 4:10
rocker rock	88:23
line $	91:32
between==	11:20 20:11 42:32 46:-12 48:9 51:-9 53:11 69:-8 71:-15 72:9 81:-8 87:-10 88:19 89:28 94:-9 100:9 110:12
between	11:20 20:11 42:32 46:-12 48:9 51:-9 53:11 69:-8 71:-15 72:9 81:-8 87:-10 88:19 89:28 94:-9 100:9 110:12
between _ and	42:33 48:10 51:-9 53:12 69:-8 71:-15 81:-8 87:-10 88:15 94:-8 100:9 110:12
and _ along	44:10 88:-9
solid==	88:49
solid	88:49
over #n	81:-8 88:48
over _ to	88:32
not rock	88:11
@job flat	17:15
it sit	3:8 18:11 88:10
its _ sit	90:11
lie _ its	53:10
line _ #n	0:10
^ middl	17:34
line #n	3:10
and _ it	38:9 39:12 94:59 114:13
wobble==s	88:9
around==	2:12 29:-11 33:28 80:10 88:31
wobble	88:9
around	2:12 29:-11 33:28 80:10 88:31
around fret	88:12
around _ #n	88:12
straightedg rock	88:9
tip==s	88:16
nutward==	2:16 3:-11 16:19 74:9 88:59 89:-15
tip	88:16
it tip	88:16
down nutward	88:17
#n flat	15:8
solid on	88:15
down toward	88:9
toward nut	88:18 89:-8
nut end	35:12 71:-8 75:18 88:26
down _ nut	88:11
toward _ end	88:14
rather==	4:9 123:23
littl==e	0:17 4:18 5:15 7:13 21:10 27:-9 39:15 50:9 67:8 88:11 120:12 123:-17
rather	4:9 123:23
is stand	14:-8 25:10
littl	0:17 4:18 5:15 7:13 21:10 27:-9 39:15 50:9 67:8 88:11 120:12 123:-17
is _ stand	25:28
bit==	0:79 1:18 3:11 13:-10 22:-17 34:12 35:-12 37:9 38:-27 41:-8 53:8 88:38 91:11
are _ still	17:16 31:31
is _ bit	0:8
are _ bit	38:9
still is	123:17
@job _ stand	17:17
is _ littl	50:11
it _ still	86:32
edge _ on	17:16 44:26 88:-15
yes==	35:51 88:14
yes	35:51 88:14
^ yes	35:51 88:14
yes it	88:10
now is	88:8
yes _ is	88:9
now _ is	51:22
solid $	88:32
is rock	88:9
now it	51:22
now _ it	107:9
seem==s	120:13
look==s	13:-8 44:-17 88:100 106:12
seem	120:13
@job _ look	44:30 88:16
#n look	17:10 44:-8 88:78
job _ look	17:13 88:27
#n _ look	114:14
reflection==	123:34
dip==s	64:11
reflection	123:34
dip	64:11
besid==e	91:20
besid	91:20
pivot==s	88:29
pivot on	88:28
pivot _ fret	88:17
dip _ the	64:11
^ #r	4:-9 18:-8 88:115 90:35 96:8 123:-9
still still	88:13
littl still	88:10
littl bit	0:8 21:12
still _ still	88:16
bit proud	88:22
bit _ on	44:10
the _ look	44:-14 88:22 114:23
still $	8:15
against==	17:17 91:11 116:10
gap==	3:18 43:-8 46:-8 86:-10 88:47 89:197 90:16 91:-8 94:-8 96:-9
hold it	17:10 88:21
it down	24:13 63:11 88:17 89:-8
against	17:17 91:11 116:10
gap under	88:23 89:46 123:13
under fret	88:12
gap _ fret	88:10 89:-10 90:17
toward==s	16:10
beneath==	40:-10 86:13 88:13 89:30 91:20
hold down	88:23
end is	88:8
is gap	88:9 89:28
beneath	40:-10 86:13 88:13 89:30 91:20
gap beneath	88:10
nut _ is	88:8
bodyward==	16:16 88:36 89:-11
held it	88:12
down bodyward	88:15
hold _ bodyward	88:11
gap _ #n	3:9 88:31 89:16 123:14
it nutward	88:12
beneath the	86:9 89:31 91:11
hold _ nutward	88:18
gap _ the	88:10
gap below	88:25
below _ and	88:8
push	2:8 24:17 43:10 46:31 84:10 88:9 89:-11 117:12
^ push	46:31 88:10 89:-9
nutward is	88:8
nutward _ gap	88:16 89:-12
no gap	88:41 89:62
is _ gap	89:19 123:12
under _ and	95:11
below the	88:13 89:16 91:11
no _ below	88:20
below _ #o	88:13
gap _ slot	88:12
hold _ no	88:8
nutward no	88:14 89:-10
below _ #n	89:8
push==ed	43:11 89:-9 117:12
feeler==	18:10 40:-15 88:26 89:14 91:35
feeler	18:10 40:-15 88:26 89:14 91:36
nutward feeler	88:10
feeler _ under	88:13
slip==s	88:14
slip	88:14
feeler slip	88:14
feeler _ below	88:9
feeler goe	88:9
down _ feeler	88:8
goe under	16:18
tight==	0:14 18:8 89:36
tight	0:14 18:8 89:36
tight on	89:37
under _ #o	88:12
tight at	88:8
down _ it	84:12
it _ at	33:14
tight _ the	89:37
^ gap	88:17 89:13
it held	88:8
it _ down	24:14 50:14 100:15
#o with	88:8
held bodyward	88:19
when it	88:9 113:12 123:9
it _ hold	18:11
the _ when	1:10 25:-16 28:-9 29:31 38:-10 121:32 123:9
fret _ when	30:12
whil==e	33:10 42:12 74:9 76:32
whil	33:10 42:12 74:9 76:32
#n whil	42:13
whil it	33:12
whil _ is	33:12
#n _ held	88:8
when _ it	11:22 19:18 29:17 30:-8 31:9
it was	1:-12 17:-8 24:13 38:12 39:17 72:10 88:12 96:17 111:11 122:8 123:-10
was on	88:12
is along	88:11
it _ along	88:14
is _ bass	88:12
that _ on	31:-9 88:8 116:23 118:12
rock==ed	16:12
pivot==ed	88:16
it pivot	88:28
crown gap	89:19
gap job	89:8
none	44:8 92:14 118:10
gap _ @job	89:24
gap _ job	89:12
#n _ some	114:-16 123:28
some _ the	2:10 123:-10
gap $	88:-10 89:97 123:-8
#n _ gap	89:35
#n _ below	89:15 91:52
#n _ beneath	89:17
beneath _ crown	89:17
below crown	89:13
below _ fret	50:13 89:14
under of	89:9
@job _ gap	89:8
under _ the	89:10
under _ fret	89:12
the of	89:11
of #r	74:10
@job no	64:9 92:9
under _ crown	88:-9 89:36
light==	17:8 88:12 89:62 97:21
light	17:8 88:12 89:62 97:21
#n light	89:19
light under	89:16
job _ light	89:19
light below	89:24
light _ the	89:32
light _ crown	89:10
@job _ below	89:9 91:14
noth beneath	89:17
noth _ fret	89:9 90:9
of _ no	0:20
has gap	89:14
gap _ it	89:24
a gap	3:9 89:27 123:15
have _ gap	89:17
have gap	89:14
@job _ have	90:10 93:11
have no	89:8 99:42 100:8 121:9
way==	2:17 8:10 9:-10 31:62 86:8 89:19 93:10 99:9
way	2:17 8:10 9:-10 31:62 86:8 89:19 93:10 99:9
the way	8:15 86:10 89:19 99:9
way down	89:19
down on	16:16 43:9 89:51 123:11
way _ on	89:19
@job _ down	89:11
on board	89:28
all _ way	89:8 99:10
down _ board	89:28
ther _ gap	89:27
caus==e	13:-8 90:107
caus	13:-8 90:107
^ caus	90:33
caus _ @job	90:11
caus _ job	90:13
caus $	90:37
@job caus	90:10
)~"
R"~(no caus	90:41
wrong==	13:-9 17:20 59:12 68:23 90:50 122:8
wrong	13:-9 17:20 59:12 68:23 90:50 122:8
noth wrong	90:9
wrong at	90:32
crown #r	90:9
wrong _ crown	90:9
found==	1:24 40:11 44:9 47:25 68:11 73:8 90:69
found	1:24 40:11 44:9 47:25 68:11 73:8 90:69
found of	90:10
noth found	90:32
noth _ on	96:11
noth keep	90:28
#n _ keep	39:13 90:17
keep _ #o	30:13
noth _ #n	90:9 92:33
fret _ up	17:-9 24:21 90:21
and _ up	35:9
shallow==	3:-8 90:92
shallow	3:-8 90:92
are shallow	90:8
shallow $	90:83
too shallow	90:34
is _ shallow	90:19
#n _ shallow	90:21
is shallow	90:25
too _ in	16:8
clog==ged	90:15
clog	90:15
#n _ clog	90:15
clog $	90:15
dirty==	28:20 90:70
dirty	28:20 90:70
is dirty	90:65
dirty $	90:70
dirt==	0:-12 3:-11 68:9 90:72
is full	90:8
dirt	0:-12 3:-11 68:9 90:72
are full	8:9
full of	8:9 90:13
of dirt	68:9
of glue	8:9
full _ glue	8:9
#n dirt	90:14
dirt at	90:9
job _ dirt	90:14
dirt _ slot	0:-12 3:-10 90:47
@job glue	90:10
for _ glue	20:8
glue at	8:9
dirt _ fret	90:13
dust==	76:22 90:13
dust	76:22 90:13
bottom==ed	2:-10 18:12 73:8 90:35
bottom out	90:47
job _ tang	90:8
bottom==s	18:26 90:77
@job tang	90:11
tang _ bottom	90:24
tang bottom	90:68
tang _ out	90:27
bottom _ at	90:12
out _ fret	74:-10 96:12
bottom _ in	90:8
out _ slot	27:14 71:19 90:8
@job bottom	90:14
kink==ed	39:46 76:29 90:52
kink	39:46 76:29 90:52
@job _ kink	90:8
kink $	39:35 90:41
is kink	39:11 90:36
#n _ kink	39:49
underbent==	90:43
underbent	90:43
is underbent	90:34
#n _ underbent	90:14
underbent $	90:43
under -	90:18
- bent	90:18
is _ -	90:17
under _ bent	90:18
bent $	18:11 42:16 90:17
at _ the	17:11 33:14
wire in	120:12
wire kink	90:8
- _ on	24:12 44:18 108:-11 110:12
wire _ kink	90:12
kink _ fret	90:11
bent in	93:10
wire _ under	9:29 17:-8 90:10
is _ bent	93:10
too wide	90:11
its slot	18:10 76:11 90:32
loos==e	0:-19 4:-12 18:10 59:12 81:-12 83:19 90:102 94:11
loos	0:-19 4:-12 18:10 59:12 81:-12 83:19 90:102 94:11
is loos	90:16
#n sit	88:29 91:22
and _ sit	88:9
too loos	18:12 90:15
is _ loos	90:15
loos $	0:-10 4:-9 18:11 59:12 81:-12 90:83
are loos	81:-12 90:27
loos slot	90:8
it _ shallow	90:16
it _ dirty	90:30
slot _ dirty	90:32
it bottom	90:25
it _ out	20:10 85:8 100:10
it _ kink	90:14
not bent	93:10
it _ not	22:8 39:9 41:14 64:11 90:9 93:9 100:10 111:8 118:11 123:-11
not _ enough	90:29
badly==	112:15
badly	112:15
it _ bent	18:11
it _ loos	18:12 90:10
noth was	90:22
was found	40:11 90:32
noth _ found	90:22
found $	90:57
caus was	90:10
no _ was	88:9 90:10
caus _ found	90:10
^ stand	25:13 91:46
low job	91:11
@job below	91:12
#n below	91:14
stand _ job	91:11
job _ below	91:17
stand _ the	11:19 25:9 29:-18 91:9
mm low	91:29
#d _ low	91:44
lower==	75:-9 91:81 96:14
lower	75:-9 91:81 96:14
in lower	91:32
#d _ lower	75:-9 91:47
lower $	91:60 96:14
in low	91:20
#n _ low	40:-13 88:10 91:55
mm lower	75:-8 91:42
the _ sit	91:16
#n _ lower	91:34
neighbour==s	40:-12 91:50
neighbour	40:-12 91:50
neighbour $	40:-12 91:39
#d below	91:29
below its	91:19
its neighbour	40:-10 91:37
#d _ its	91:16
below _ neighbour	91:16
low by	88:37 91:21
@job _ low	91:11
@job #d	91:9
#d low	91:10
#d _ on	40:12 68:9 81:9 123:12
neighbor==s	91:16
neighbor	91:16
neighbor at	91:16
it stand	13:44 16:-9 91:10
sit #d	91:26
^ last	21:20 33:-9 40:-8 44:-9 49:10 88:33 92:66 123:-8
last fret	33:-9 40:-9 44:35 76:-9 91:12 92:77
ever==	1:-11 17:-8 22:11 26:16 33:22 39:8 52:-9 54:9 92:119 99:8 111:23 118:12 123:-10
ever	1:-11 17:-8 22:11 26:16 33:22 39:8 52:-9 54:9 92:119 99:8 111:23 118:12 123:-10
last ever	92:11
ever of	92:15
the _ ever	92:11
ever _ job	92:9
is last	92:14
fret ever	92:15
#n _ last	88:-11 92:61
last _ ever	92:10
ever $	92:40
ther will	92:33 111:11
will ever	1:-8 22:12 39:14
the _ ther	25:22 65:-9 66:27
will _ be	28:33 47:16 52:-11 85:10 92:11 111:13 117:9 123:-30
#o _ last	92:20
ever _ slot	92:9
is #r	92:8
last _ is	92:10
beyond==	39:12 76:20 86:23 92:66 123:-8
@job will	37:24 47:15
will be	4:12 28:13 29:-19 44:-10 52:13 57:13 100:35 110:22 111:10 114:11 117:13 123:22
be no	100:11
no more	37:-9 51:37 52:-14 56:35 85:8 92:74 108:11 113:12 121:48 123:-15
beyond	39:12 76:20 86:23 92:66 123:-8
more beyond	92:29
beyond fret	92:10
the _ will	52:14 53:10 100:11 107:13 117:11 118:29 123:-15
no _ beyond	92:46
beyond _ #n	92:25
are no	92:10
more fret	92:49
fret after	92:28
are _ more	92:8
no _ fret	92:49
more _ after	49:40 92:36 113:-9
fret beyond	92:23
beyond #r	92:15
is _ more	84:10
after slot	92:10
after _ #n	0:35 6:13 69:9 92:19 104:18 113:31
no fret	92:11
beyond _ #r	92:9
beyond slot	92:23
more _ slot	92:23
no _ ever	92:12
ever beyond	92:15
@job _ ever	92:44
ever _ #r	92:11
^ neck	93:54
neck $	13:45 93:46 103:19
neck @job	93:12
is straight	13:-8 93:57
#n neck	93:40 123:8
job _ neck	93:46
@job neck	13:-9 47:8 75:10 86:27 88:13 93:40
of _ neck	86:15
neck is	13:-8 47:34 93:15 123:11
neck _ straight	123:13
neck straight	93:24
the _ neck	47:10 93:26
backbow	93:9
backbow $	93:9
bow==ed	27:13 62:10 93:38
@job back	13:22
bow	27:13 62:10 93:43
bow $	27:14 93:21
back -	93:19
- bow	93:19
back _ bow	93:19
hump==ed	93:9
hump	93:61
hump $	93:36
hump==	93:52
neck has	93:21
a hump	93:39
#n _ has	93:13
has _ hump	93:30
^ hump	93:10
hump in	93:19
hump _ the	93:17
in _ neck	93:17
in neck	93:16
hump _ neck	93:8
relief==	93:105
too much	16:8 41:14
relief	93:105
relief $	93:85
a bit	34:14 35:-11 88:22 123:12
bit of	0:18 1:16 22:48 38:-16 53:8 78:27 81:10
is bow	93:8
neck _ bow	93:11
^ relief	93:12
relief in	93:20
relief _ neck	93:8
relief _ the	93:10
straighten==ed	93:71
straighten	93:71
^ straighten	93:21
straighten neck	93:12
straighten the	93:24
straighten _ neck	93:24
straighten $	93:35
been straighten	93:13
has _ straighten	93:8
it _ straight	93:16
it straight	93:41
reseat==ed	30:-13 88:-8 90:-8 94:216 96:-12 117:-8 118:21 123:31
reseat	4:-8 13:-8 30:-13 42:13 44:-8 88:-10 90:-11 94:265 95:-9 96:-16 117:-9 118:21 123:49
^ reseat	94:107
reseat job	94:14
reseat _ @job	94:35
reseat fret	94:11
reseat _ #n	94:21
reseat _ #r	94:20
#r _ at	96:17 104:15
pull and	71:12 74:-9 94:36
and reseat	94:11
pull _ reseat	94:11
reseat _ fret	94:33
shim==med	44:-8 94:113 96:-8
shim	44:-8 76:-10 90:-8 94:130 96:-9
and _ are	12:27 74:8 80:23 95:8
#n _ shim	94:27
shim $	94:26
were pull	71:15
and shim	94:15
were _ and	33:13 71:14 94:20
pull _ shim	94:15
are reseat	94:27
@job _ reseat	94:15
reseat $	94:42
#n _ reseat	30:-12 94:35 123:62
reseat at	94:23
reseat _ #t	94:23
afresh==	94:38
afresh	94:38
#n afresh	94:26
afresh $	94:35
seat _ #n	42:17 94:16 103:17 106:21 123:19
anew _ hour	94:17
again @day	94:9 114:13
^ shim	94:68
shim #n	94:26
and _ @day	30:27 46:-10 53:-8 94:13
shim and	94:28
shim _ fret	94:30
^ glu	95:129
morn _ #n	42:13 49:14 95:12
glu @job	95:31
glu down	95:17
down fret	95:21
glu _ fret	95:13
clamp==ed	88:-10 94:-11 95:142 96:-8
clamp	56:41 76:-8 88:-13 90:-8 92:-8 94:-13 95:204 96:-13
clamp fret	95:28
clamp _ slot	95:21
glu fret	30:9 95:23
glu _ #n	30:21 95:37
glu and	95:36
and clamp	95:58
glu _ clamp	95:27
clamp _ the	56:16
clamp down	95:10
clamp _ fret	95:21
^ clamp	95:45
down _ #n	50:13 54:19 57:11 88:-11 95:9 100:12 123:25
clamp and	95:19
down _ slot	0:8 74:19
glu _ the	95:11
down @day	96:9
#n _ glu	95:28
are _ down	95:11
were glu	95:11
were _ down	74:8
is glu	95:24
clamp $	56:8 95:37
@job _ glu	95:13
are _ and	14:-8 25:9 32:10 42:17 80:11 101:14
are clamp	95:12
#n _ clamp	95:37
clamp _ at	95:15
clamp #n	95:13
levell==ed	2:-8 13:-11 17:-10 33:43 43:-12 44:-8 88:-15 90:-8 94:-9 96:235 123:-8
^ levell	27:29 96:113 102:11
levell at	96:16
levell slot	96:23
levell _ #n	96:20
levell _ @job	106:8 107:40
levell down	96:13
down #n	96:10
levell fret	96:20
levell _ fret	96:27
level==ed	96:90
#r @day	96:18
level _ fret	96:17
#n _ levell	17:16 88:-8 96:20
levell $	17:14 96:43
is levell	96:36
@job _ levell	96:21
was level	60:11 96:27
was _ yesterday	35:-11 39:31 70:17 72:10 77:24
were level	96:30
slot _ were	74:9 96:19
sand==ed	17:-9 26:11 96:60
sand	17:-9 26:11 96:60
^ sand	96:31
sand fret	96:31
job _ down	43:41 88:-9 96:33 123:12
^ fil	25:-8 96:28 102:24
)~"
R"~(sand _ fret	96:17
took fret	96:22
@job down	16:-9 43:12 76:10 95:15 96:16 107:28
fil _ the	42:21 96:15 102:9 107:23
setup==	84:11 97:29 98:85 102:-9 103:-8
minute==s	16:-8 27:18 30:-9 33:-8 34:9 35:-9 44:22 71:-8 74:16 78:-11 84:-17 95:12 97:31 98:72 101:14 102:-14 103:134 104:16 106:14 107:29 114:-12 123:15
defin machin	97:60
setup	84:11 97:29 98:85 102:-9 103:-8
minute	16:-8 27:18 30:-9 33:-8 34:9 35:-9 44:22 71:-8 74:16 78:-11 84:-17 95:12 97:31 98:72 101:14 102:-14 103:134 104:16 106:14 107:29 114:-12 123:15
setup minute	84:-16 97:8 98:29
minute #n	84:-13 98:21 103:12
#n name	48:-9 84:-16 97:17 119:8
~ setup	84:-9 97:16
setup _ #n	98:35
minute _ name	84:-9 97:14
name _ count	48:-9 84:-9 97:22
count _ name	48:-9 84:-9 97:22
name _ setup	84:-9 97:16
~ _ minute	84:-9 97:16
#n _ minute	95:16 107:14
machin name	98:25
machin _ ~	97:35
machin ~	57:-11 97:80
machin _ name	97:11
new machin	57:-14 97:111
defin _ machin	97:12
machin call	97:47 98:-8
a machin	26:8 97:44 98:-9 99:35 102:-9
a _ machin	97:26
we now	51:13 74:-10 98:9
now have	98:9
now _ a	73:11 122:12
have _ machin	99:11
add _ machin	97:9
add machin	97:30
chang machin	98:26
machin machin	98:16
sander setup	98:17
#n machin	26:-10 97:-10 100:8 104:14 110:-11
chang _ machin	98:17
bench _ #c	98:10 100:11
#c _ sander	98:25
have #c	98:20 116:10
have _ bench	98:20
#c belt	98:18
#n press	13:13 16:48 43:29 98:44 123:-32
got _ press	26:25 98:27
got _ sander	101:21
#c press	98:18
are _ bench	98:20
#n belt	98:12
are _ belt	98:15
#n _ sander	98:12
#n sander	98:41 101:10 123:30
are _ sander	98:16
are enough	98:32
enough belt	98:9
ther _ enough	98:32
enough _ sander	98:9
enough sander	98:14
enough bench	98:9
min==	98:23 103:26 119:33
set up	48:9 55:11 87:-10 97:22 98:56 103:-16
up sander	105:18
sander take	98:8
min	98:23 103:26 119:33
#n min	103:28
up _ take	98:13
take _ min	98:21 103:13
min $	98:16 103:25
up bench	105:29
bench take	98:16
#n minute	22:8 27:-8 30:-8 34:10 35:-8 44:23 74:17 78:-10 95:12 97:24 98:46 101:15 103:86 104:21 106:15 107:31 114:-12 123:16
bench _ #n	98:36 123:15
take _ minute	98:24 123:33
minute $	97:19 98:37 103:67 104:13
up press	105:11
up belt	105:12
up _ sander	105:11
take #c	98:16 120:9
#c min	98:17
set -	98:31 103:-10
- up	98:31 103:-10
set _ up	57:9 98:29 103:-10
- _ for	0:18 3:-11 36:9 45:13 69:-10 98:8
up _ press	98:21
to set	97:13 98:16
#c _ to	38:11 58:29
to _ up	6:12 97:13 98:16 106:14
^ belt	25:-8 100:30 101:44
minute to	97:10 98:16
need _ minute	98:13
minute _ set	97:9 103:15
need no	98:45
no set	98:26
sander _ no	98:13
need _ set	82:10 98:26
no _ -	98:8
bench need	98:14
bench _ no	98:33
no setup	97:13 98:15
need _ setup	98:19
setup $	97:22 98:21
no _ up	98:18
press _ no	98:18
call belt	98:12
sander to	98:42
call _ sander	98:31
press ~	98:40
call _ ~	98:25
renam press	98:26
renam _ ~	98:26
call sander	98:28
sander ~	98:19
call _ to	98:16
drop machin	99:60
drop _ machin	99:38
machin _ bench	98:25
the _ belt	98:17 99:9 102:-8
drop _ press	99:14
longer _ press	99:26 105:18
i _ no	99:34 105:11
longer _ bench	99:16
no sander	99:14 100:29
sander any	99:23 105:16
sander _ more	99:23 105:16
no press	99:11 100:32
press any	99:11
press _ more	16:9 99:11
no bench	100:23
bench any	64:23 123:-11
no belt	99:12 100:19
no _ sander	99:12 100:19
belt _ any	99:13
remov machin	99:67
remov _ bench	99:36
remov _ press	99:20
remov _ machin	99:25
number==	0:14 3:42 4:-17 5:-10 8:-8 10:-10 11:-16 12:-12 13:41 15:-8 16:8 17:-15 22:-13 25:-12 28:-8 29:-21 30:-13 33:-16 35:20 36:11 38:-9 39:15 40:-10 41:-8 44:47 46:8 54:-9 58:27 59:49 63:10 64:35 69:33 70:-13 72:19 78:-9 83:-8 89:12 91:12 93:-13 96:8 97:-10 98:17 99:-8 100:70 101:55 102:-10 103:-9 104:-11 105:27 106:-8 107:-9 110:-9 113:-9 115:13 116:-14 117:9 123:32
^ machin	99:-10 100:19 101:47
machin down	100:19
sander number	100:31 101:37
number #c	58:33 59:29 100:14
bench number	100:28
sander until	100:30
begin tomorrow	110:11
begin this	110:8
press number	100:27
#n number	17:-10 96:29
machin _ begin	100:8
machin _ number	100:8
number _ machin	97:-8 100:10
at _ machin	101:14
belt _ number	100:13 101:19
at _ last	91:14
begin _ morn	110:8
begin yesterday	110:8
yesterday machin	101:10
yesterday _ press	101:10
sander #n	98:-11 100:75 101:29
down from	100:9
till this	110:14
sander _ is	101:13 105:15
till _ morn	110:14 114:16
from this	10:12
out _ order	100:24
number _ of	3:11 17:17 77:10 91:18
order _ at	10:12
number is	101:10
is _ until	100:8 117:28
sinc #n	21:9 22:11 36:11 56:12 100:25 106:21
sinc _ hour	36:12 100:9
sinc _ at	106:15
press brok	123:12
brok _ at	100:9
brok $	38:-12 100:42 123:12
belt _ #n	101:19
number brok	100:22
brok down	117:8 123:12
going to	9:8 11:-14 12:-17 29:49 38:-12 57:11 64:-11 82:16 96:13 106:21 107:-10 111:10 123:27
be out	100:14
going _ be	11:-14 12:-15 29:53
be _ of	51:8 53:-8 100:14
to _ #t	100:10
broken==	25:26 39:15 47:23 85:16 98:-8 100:60 101:-8 106:-12 107:17
#n will	41:-11 44:-9 49:-12 100:17 114:12 116:18 117:11 123:12
broken	25:26 39:15 47:23 85:16 98:-8 100:60 101:-8 106:-12 107:17
broken _ at	106:-11 107:18
sander will	101:8
sander _ be	100:10
will _ out	41:-11 123:20
press will	100:15 101:10
be down	100:9
press _ be	29:12 100:12 101:11 103:19
from _ becaus	109:9
to _ down	88:11
#t to	53:24 74:-10 100:13 104:16 108:-14 110:22
bench _ is	100:22 101:21
all day	100:40 111:-8
day becaus	100:15
sander _ will	101:10
all _ becaus	100:15
day _ ~	100:15
order on	100:15 115:10
@day all	100:12
order _ @day	100:15 115:10
@day _ day	100:12
down for	0:8 26:31 54:10 104:13 111:12
down _ @day	100:15 123:40
all tomorrow	104:11
all _ all	100:11
sander doe	99:13 100:9
work all	100:8
tomorrow morn	11:40 26:35 100:11
sander _ not	99:12 100:11 102:8
not _ all	100:8
all _ morn	104:11
bench #n	100:23 101:31
today _ becaus	100:8
number _ doe	37:13
not _ for	109:19 113:22
#c _ not	59:48
no _ all	100:9
sander next	26:17
bench _ today	60:19 63:-10 100:14
no _ the	46:38 100:39
sander all	104:11
be back	100:17
back at	24:-27 100:10 106:69 123:44
will _ back	100:17
number _ back	101:11
back yesterday	100:24 101:-14
sander _ back	25:-8 100:10 101:26
bench #c	100:24
#c _ back	100:21 101:-10
take bench	104:9
till yesterday	110:8
take _ number	0:29 1:-11 100:11
take _ sander	99:18
take _ out	99:11
take sander	102:16
servic for	85:14
not use	100:41 109:-10
use bench	100:9 101:13 109:-8
till #n	51:16 53:33 108:-12 110:46
not _ bench	100:8 105:14 109:-8 123:-9
not _ press	100:12 105:8
use _ number	1:37
not _ sander	100:9
not _ belt	100:10
number $	13:-22 123:67
number _ on	0:37 1:-12 3:43 41:-14 59:14 72:17 89:10 92:8
for _ rest	109:14
machin up	99:-8 101:48
machin _ at	101:14
is up	37:17 44:13 64:40 101:28
up again	24:20 44:11 47:16 64:-14 101:28 106:36
are back	74:-8 94:10 101:13
work again	101:55
press _ work	16:-9 25:54 100:-8 101:13
number _ again	101:9
press work	101:20
again #n	101:8
work _ #n	27:9 52:14 101:8 110:19
again _ hour	101:8
#n work	101:29
sander _ work	101:17
run again	101:33
bench _ again	101:19
back servic	101:12
take _ back	24:-9 34:12 62:23 122:59
number back	101:10
press _ back	25:20 29:-8 100:-19 101:60
back _ servic	25:-10 101:33
back into	101:13
into servic	101:13
put _ sander	101:9
put sander	101:8
put _ back	94:13
sander #c	101:10
#n back	36:33 37:28
bench again	101:11
can _ bench	101:13
use _ again	101:11
sander _ again	101:34
will stay	101:36
stay in	25:-8 101:19
will _ in	53:20
stay _ servic	25:-8 101:19
stay servic	100:-9 101:38
#n _ stay	101:11
will _ servic	101:30
not _ of	100:-23 101:30
^ stag	102:53 103:37
stag machin	102:59
^ check	0:-16 3:33 40:11 90:16 93:11 94:-8 114:31
fret need	102:11
pull _ need	102:12
fret _ press	43:10
cut need	102:26
cut _ press	102:26
^ corner	102:29
level need	102:27
seat _ done	42:23 102:11
with _ now	11:17 102:11
seat need	102:26
usual==	9:14 53:13 102:11 108:-14 110:51 111:26 112:65 123:-17
the need	43:11
need its	102:11
usual	9:14 53:13 102:11 108:-14 110:51 111:26 112:65 123:-17
its usual	102:11
usual machin	102:11
need _ usual	102:11
its _ machin	102:11
fret _ its	77:9 84:10
)~"
R"~(usually==	5:-9 27:45 102:8 103:9
need what	102:9
what it	1:-9 68:34 102:9
usually	5:-9 27:45 102:8 103:9
it usually	102:9
usually need	102:9
board _ what	103:10
need _ it	102:9
what _ usually	102:9
it _ need	102:23
fret _ what	27:10
bend need	102:16
stag minute	103:29
minute stag	103:23
bend stag	102:10
22==	103:28
^ doing	103:14
22	103:28
22 take	103:15
hour==	16:-8 28:-8 29:23 37:19 42:-10 49:9 69:13 94:16 101:9 103:91 104:35 107:9 109:-8 123:-17
take us	27:21 32:-13 103:25
an hour	37:20 42:-9 49:10 69:18 94:18 101:9 103:40 104:35 107:10 123:-8
for 22	103:11
22 fret	103:13
take _ an	103:18
quarter==	43:9 97:8 107:16
us a	49:18 50:8 57:10 66:-8
quarter	43:9 75:13 97:8 107:15
a quarter	97:8 107:16
quarter of	43:9 97:8 107:16
of an	43:9 91:14 97:8 107:16
quarter _ an	43:9 97:8 107:16
check slot	106:11 114:9
minute for	27:28 103:9
us _ min	103:14
half==	36:-10 41:9 44:-9 51:13 53:15 54:28 60:10 65:8 66:-8 68:13 73:11 81:14 88:-8 103:38 104:24 105:12 106:11 107:29 110:9 123:-12
half	36:-10 41:9 44:-9 51:13 53:15 54:28 60:10 65:8 66:-8 68:13 73:11 81:14 88:-8 103:38 104:24 105:12 106:11 107:29 110:9 123:-12
take half	103:12
half an	81:15 94:8 103:29 104:9
half _ hour	81:15 94:8 103:29 104:9
true take	102:8 103:14
cut _ us	54:10 103:12
report==ed	11:-10 33:55 37:-9 103:93
take as	103:19
as long	103:19
long as	103:19
as is	103:10
report	5:-8 11:26 13:11 16:-17 20:-13 21:16 27:17 29:-13 33:79 34:22 37:-11 60:9 101:10 103:107 122:40 123:-14
is report	103:22
fret _ as	92:14
take _ long	103:33
as _ as	2:11 50:19 97:20 98:16 103:17 120:11
long _ is	16:10 43:-10 103:10
as _ report	103:12
report $	33:38 103:66
been report	103:11
has _ report	103:11
take what	33:-11 103:51
was report	33:-9 37:-9 103:50
take _ was	103:23
what _ report	11:-8 33:26 37:-9 103:57
cut _ what	5:24 103:9
slot _ what	0:9 103:9
take _ is	103:12
to _ machin	102:13 104:13 110:-9
machin _ hour	104:8
hour _ begin	110:8
#o hour	110:8
press _ from	98:15
press _ hour	43:17
book me	104:28
me belt	104:18
book _ belt	104:18
me _ sander	104:18
book press	104:13
book _ for	26:23 34:-8 104:26
sander _ job	104:17
for _ minute	34:14 104:28
for half	60:12 104:9
for _ an	104:10
now for	104:11
bench _ for	98:12
now _ an	104:11
for _ hour	104:36
book _ press	123:19
press _ @person	104:8
book the	104:10 123:19
book _ @job	15:15 26:17
from _ #r	74:9
like==	0:-13 2:8 6:8 9:10 10:15 13:24 19:8 26:9 28:-12 29:11 36:9 44:8 53:-10 54:16 57:9 58:9 59:-8 73:10 74:-10 93:10 104:19 110:12 111:11 120:11 122:9 123:-23
we would	52:-9 104:9 111:16
like	0:-13 2:8 6:8 9:10 10:15 13:24 19:8 26:9 28:-12 29:11 36:9 44:8 53:-10 54:16 57:9 58:9 59:-8 73:10 74:-10 93:10 104:19 110:12 111:11 120:11 122:9 123:-23
would like	0:-10 13:16 18:8 19:10 27:8 54:18 104:8 123:-8
tomorrow afternoon	104:26
afternoon for	104:26
tomorrow _ for	104:42
@person _ press	104:8
sander _ mine	104:25
mine for	68:18
bench _ reserv	104:17
reserv _ at	104:17
put me	104:13
me down	104:13
me for	36:10
put _ down	57:9 61:8 63:11 102:9 104:20
press _ me	16:9 123:17
bench _ me	57:10 104:11
i want	4:12 6:9 7:15 50:17 113:11
want belt	104:10
to _ i	10:9 71:15 104:12
#n _ want	13:12
want _ sander	102:23 104:8 123:20
from _ i	88:18
#r _ want	104:13
#r we	104:14
@day _ we	104:11 111:9
#n _ need	13:23 46:14 104:13
#n _ have	33:-9 44:12 69:13 71:14 96:-10 116:8
we want	9:30 98:18 104:8
book==ing	15:14 23:-8 26:21 35:9 41:9 45:-9 47:-8 104:-9 105:192 123:58
cancel book	105:31
book #c	26:-9 105:11
book #n	26:-14 105:62 123:54
cancel _ book	105:33 123:18
the _ book	25:31 29:-11 32:12
book _ machin	26:-8 105:8
cancel my	105:20 122:10
my book	105:17
the _ number	6:13 13:13 17:13 23:8 36:12 37:-8 39:-9 59:12 89:11 115:18 116:-8
book _ job	105:18
cancel _ for	118:10
book _ @person	105:9
by @person	42:16 63:14
cancel _ sander	105:32
my press	105:25
cancel _ press	26:41 123:-13
cancel it	105:47
cancel that	105:13
that book	105:21
need _ any	105:17
i not	23:23 105:15 123:-11
i _ need	105:15 123:-9
free up	29:-13 105:69
free _ sander	105:18
give back	82:-15 83:34 105:48
up _ on	24:21 29:-8 105:24
free _ bench	105:29
unbook==	105:93
unbook	105:93
^ unbook	105:93
unbook press	105:46
sander today	105:22
unbook belt	105:20
unbook _ sander	105:20
^ start	42:-8 51:22 106:86
start job	15:-24 29:28 33:46 123:-10
@person at	33:14 60:12 63:12
start _ #n	15:-24 29:21 33:45 42:29 106:-15 110:15 123:-10
polish _ job	107:27
corner $	27:23
crown at	19:11
nip _ the	102:19
with check	106:9
i _ begin	106:10
start==ing	42:-9 51:22 106:85
am start	106:26
i _ start	106:35
have start	106:19
start pull	106:16
am begin	106:9
tru _ @job	106:37
we _ start	106:8
start _ pull	106:10
start to	106:47
start _ cut	106:10
am _ to	4:10 6:12 32:10 106:11 107:-11 123:14
start _ the	42:-8 106:48
with _ file	96:10
file _ the	96:10
file on	96:10
with _ pull	106:13
bend of	42:32
the bend	40:8 42:22 99:36 102:10 103:11 107:10
with _ bend	99:38
start==s	57:14 86:26 110:17
@person _ start	110:15
@person _ bend	106:24
began==	3:-10 21:10 45:10
began	3:-10 21:10 45:10
@person _ been	60:8 106:9
@person goe	110:22
is _ tru	64:18 106:34
went on	29:-11 33:30
now cut	70:13 81:-10
@job now	46:14 81:11 83:13 106:20 123:-8
on _ cut	70:13 81:-10
of _ now	42:9 81:11 117:17 120:16
is _ tang	18:18 90:13
with _ @day	51:20 110:-10
am now	106:15
#n now	1:-11 17:-8 29:26 38:11 40:-14 42:-9 45:-8 63:15 71:-9 74:72 76:-8 77:8 81:-9 84:11 98:28 106:31 120:12
job _ now	29:28 42:-9 63:15 106:32
are now	70:13 73:11 81:-11
for _ now	3:-10 11:-9 76:17 113:14 117:15
am _ fret	41:-11 123:20
dress==ing	13:-10 25:-8 27:8 54:49 88:-8 102:14 103:21 106:56 107:18
am going	32:10 64:24 107:14 123:8
i _ going	32:10 38:-12 64:24 123:20
going _ bend	106:13
are going	11:-8 12:-15 29:29 106:18 107:13
we _ going	106:18
on true	106:14
true _ board	27:11
tru _ end	107:9
go _ with	106:8
going on	29:11 38:12 92:10
on _ bend	9:-8 27:17
carry==	46:9 99:10 106:8
carry	46:9 99:10 106:8
resum==ing	106:50
resum	21:12 42:-11 65:13 106:100
^ resum	42:-11 106:100
resum @job	106:40
continu==e	106:13
continu	106:37
^ continu	106:37
continu job	106:27
continu _ #n	106:27
resum==e	21:12 65:13 106:50
resum job	106:18
resum _ #n	106:18
continu==ing	106:25
resum pull	106:21
resum _ fret	106:11
resum _ the	106:18
is being	23:9 42:-9 106:69
being pull	106:26
pull sinc	106:17
@job _ being	106:18
is _ pull	106:26
being _ sinc	106:17
nip==ped	38:8 76:23 106:14
#n _ being	106:52
being tru	106:29
sinc yesterday	33:11
stop job	107:11
stop _ the	106:-10 107:45
stop the	107:16
stop==ping	107:62
am stop	106:-10 107:32
am _ for	107:26 109:8
stop work	62:9 107:51
i _ stop	107:18
stop _ here	62:9
paus==ing	42:-8 107:29
paus	42:-18 69:-8 81:-8 94:-9 96:75 106:-16 107:150
am paus	107:22
i _ paus	107:23
paus $	107:86
interrupt==ed	42:-10 107:77
interrupt	42:-10 107:77
work this	107:16 108:-18 110:33
i _ work	28:11 107:19 110:-10
are stop	107:17
tak==ing	5:-9 27:14 41:10 42:10 45:-8 63:19 107:28 109:45
break==	51:21 107:63
tak	5:-9 27:14 41:10 42:10 45:-8 63:19 107:28 109:45
am tak	63:20 107:10
tak a	107:38
break	51:21 107:105
a break	51:21 107:28
am _ a	107:17 109:21
tak _ break	107:23
break $	107:63
hav==ing	3:15 42:15 46:8 61:15 107:11 121:9
hav	3:15 42:15 46:8 61:15 107:11 121:9
hav a	107:12
i _ tak	41:10 45:-8 63:20 107:12
rest $	91:14 96:14 107:11 118:11
paus==e	42:-9 69:-8 81:-8 94:-9 96:77 106:-9 107:104
a paus	107:10
are tak	107:15
are _ a	18:10 107:15
stop pull	107:14
paus with	106:-9 107:40
paus _ pull	107:26
^ paus	42:-8 69:-8 81:-8 94:-9 96:76 107:71
we _ stop	106:-9 107:20
stop with	106:-9 107:28
now #n	120:21
work with	63:22 107:9
we _ work	9:12 14:26 25:-8
have stop	107:18
stop on	107:19
stop _ job	107:29
stop at	92:11 107:9
paus==ed	107:17
stop _ pull	76:34 107:8
pull _ at	107:19
lunch==	43:-12 59:9 106:-9 107:94 114:12 123:30
are off	107:22
lunch	43:-12 59:9 106:-9 107:94 114:12 123:30
to lunch	107:19
we _ off	107:10
off _ lunch	107:12
lunch $	43:-12 106:-9 107:95 114:12 123:30
am off	109:35 123:-8
for lunch	107:31
i _ off	13:10 67:11 109:31 118:23 123:-9
^ out	69:10 81:-10 85:14 107:24
)~"
R"~(out to	46:17 107:14
out _ lunch	107:38
we out	8:38 9:-15
am out	109:17
^ lunch	107:51
^ break	107:77
the day	14:-8 28:34 44:10 53:10 107:28
done _ now	107:16
we done	13:25 107:11
home==	0:-8 1:20 42:16 47:10 53:11 94:21 107:56 123:10
home	0:-8 1:20 42:16 47:10 53:11 94:21 107:56 123:10
going home	53:11 107:39
am _ home	107:34 109:-9
home $	42:17 107:57 109:-10 123:13
call==ing	11:21
it a	75:10 101:10 107:50
i _ call	84:12
am _ it	106:19
call _ a	107:50
it _ day	107:50
are _ home	107:30
off home	107:25 109:-9
own==	2:-15 5:11 8:10 28:-21 33:17 71:14 82:12 108:61
own	2:-15 5:11 8:10 28:-21 33:17 71:14 82:12 108:61
^ own	28:-20 108:61
own hour	28:-17 108:53
@person hour	28:38 29:-9 51:-12 108:18
work @day	51:17 108:57 109:-16 111:-10
@person _ @day	51:-17 61:-9 100:-8 108:102 109:16 110:11
work _ to	108:23
here @day	108:25 110:-8 115:9
here _ @day	29:-11 33:29 52:21 109:22 123:-16
@day @person	108:12 110:31
work from	108:22
to _ @person	12:11 27:-9 30:9
@day _ work	108:23 110:-12
on _ @person	29:20 108:15
@person _ are	28:-11 51:-8 108:30
on _ are	51:8
work shop	28:-9 108:25
shop hour	28:-13 108:31
@person _ shop	28:-9 108:25
work _ hour	28:-9 108:25
work the	14:-8 28:20 110:8
whenever==	24:8 28:-9 50:13 108:35
whenever	24:8 28:-9 50:13 108:35
work whenever	28:-9 108:35
whenever the	108:12
@person _ whenever	28:-9 108:35
whenever _ shop	108:12
whenever we	108:23
whenever _ are	108:23
^ day	109:25 110:29
me _ last	9:17
part _ last	52:-11 109:13
off this	109:8
@person _ off	28:32 66:11 105:8 109:16 123:-20
ill==	28:-14 29:-11 61:-8 62:-8 109:56 123:60
ill	28:-14 29:-11 61:-8 62:-8 109:56 123:60
away for	23:34 31:16
@person _ away	31:16 109:27
away on	109:10
away from	59:19 80:11 108:-9 109:32 121:12
out from	100:9
me off	109:9
off _ #o	76:22
@person will	109:24 110:14
not come	49:-15 72:-21 109:46 116:14 118:42 123:10
not be	37:8 47:16 52:-12 59:8 85:13 92:11 100:16 109:38 111:13 117:9 123:-30
be here	28:25 109:19 117:22 123:-8
here _ becaus	52:11
do _ come	4:16 109:16 123:-12
not _ tonight	109:30 123:-15
not _ tomorrow	109:-8 123:37
can _ work	109:20
not _ in	93:10 109:24
here _ even	109:9
i will	4:10 16:-14 29:-9 35:46 42:-10 63:37 93:-15 102:8 107:-10 109:11 110:9 111:-11 113:-10 123:96
here #r	110:31
morn off	109:12
this _ off	109:14
week off	109:26
take _ week	120:11
next _ off	109:26
@day off	109:51
off becaus	109:11
off _ ~	109:11
get==s	0:-12 1:8 5:22 33:-14 35:21 36:-9 38:12 72:26 82:9 100:8 123:73
am _ this	109:18
i _ this	110:12
#r off	109:16
to _ begin	110:13
ago _ #r	110:8
yesterday _ #o	16:-8 43:10
day _ begin	110:9
here only	108:10
is _ only	110:11 117:8
late _ @day	117:40
come only	117:24
yesterday on	110:12
@person _ only	60:16 108:-10 110:28
only _ yesterday	110:8
from _ on	28:-9 29:-9 51:37 54:51 56:18 57:36 60:15 98:21 102:16 109:-11 119:14
come from	1:-18 5:10 22:-9 32:10 33:32 72:-15 123:26
in only	110:14
in _ on	3:-10 13:18 76:17 81:22
come _ @day	115:12 117:16
come _ only	110:11
this _ on	109:15
am in	110:14
@person _ early	110:13
early _ this	110:11
leave==s	73:8 110:12
leave	73:8 110:12
@person leave	110:12
home early	110:8
leav==e	3:8 13:-11 33:-9 42:-9 63:15 107:51 109:29 110:26 113:19 114:13 123:53
leav	13:-11 33:-9 42:-9 62:-13 63:15 107:50 109:21 110:26 113:19 114:13 123:83
i leav	33:-8 107:9 110:32 123:32
leav early	110:20
i _ early	110:20
leav _ on	110:12
on _ till	96:14
early _ the	49:8
go home	42:18 123:20
go _ on	37:10
home _ the	53:11
leav the	13:-8 61:9 107:32 113:21 114:16
work only	108:-9 110:19
am here	110:12
i _ here	1:10 110:12
@day _ is	52:-11 108:-9 110:27 111:48 114:11
today @person	110:24
tomorrow after	52:10 110:9 111:20
in _ after	110:30
tomorrow _ all	104:32 110:8 111:20
#o after	110:20
the _ after	0:45 6:13 16:-13 44:20 110:19 113:13 114:10
#o _ all	110:20
work next	28:12
@day as	51:-8 53:-9 111:25 123:29
as usual	110:45 111:26 112:65 123:-17
@day _ usual	111:26
usual $	108:-14 110:57 111:26 112:39 123:-16
of _ as	31:9 49:33
#r as	110:14
here _ as	110:14
#r _ usual	110:14
today as	110:23 123:-14
today _ usual	110:23 123:-14
am not	81:-8 109:-36 110:19 123:58
not off	109:-35 110:20 123:31
am _ off	109:-36 110:20 123:31
not _ today	110:21 123:-16
reopen==	111:150
reopen	111:150
^ reopen	111:150
reopen day	111:30
day day	111:18
reopen _ day	111:18
open _ after	111:35
december _ all	100:11
not clos	22:8 52:-42 111:69 123:13
shop _ not	52:-16 111:27
are not	47:22 52:-26 111:25 112:15 123:28
not _ #o	111:12
work day	111:20
day after	44:9 111:28
work _ after	111:10
day _ all	111:28
a open	111:19
open day	111:19
day again	111:19
open _ again	111:19
is _ work	52:10 101:10
reopen the	111:41
reopen _ #o	111:41
reopen on	111:27
reopen _ #r	111:27
priority==	13:-8 112:163
priority	13:-8 112:163
^ priority	112:23
priority job	112:10
#n priority	112:29
priority #n	112:66
job _ priority	112:30
priority _ job	112:24
priority _ #n	112:17
@job priority	112:22
has priority	112:23
#n _ priority	112:12
@job _ priority	112:31
priority #c	112:14
priority of	112:34
the priority	112:16
the _ priority	112:15
#n _ urgent	112:23
@job _ urgent	112:26
very==	16:10 86:13 112:30
very	16:10 86:13 112:30
is very	112:31
very urgent	112:14
#n _ very	112:11
@job _ first	112:14
goe first	112:11
#n _ first	112:24
#n come	1:-12 5:24 17:8 33:31 40:10 112:11 113:10 115:18 116:-11
come first	112:18
job _ come	5:24 17:8 40:10 112:11 113:10
@job come	72:19 74:-8
@job first	112:26 113:29
the _ first	112:26
#n first	112:17 113:17
job _ first	112:17 113:17
priority $	112:29
important==	112:79
important	112:79
is important	112:12
important $	112:34
very important	112:17
is _ important	112:22
rush==	13:-13 46:12 53:9 112:130 123:-10
rush	13:-13 46:12 53:9 112:130 123:-10
a rush	112:14
is _ rush	46:15 112:24
rush $	53:9 112:8
rush job	13:-11 112:87
top==	4:9 12:23 35:-9 36:16 40:12 70:10 87:9 96:8 112:62
top	4:8 12:23 35:-9 36:16 40:12 70:10 72:18 74:-12 87:8 96:22 103:11 112:61
on top	12:23 112:62
is _ top	112:11
top $	12:23 112:62
#n _ top	112:30
@job _ top	112:20
put job	112:19
a priority	112:20
is _ priority	112:8
hurry==	46:15 112:80
hurry	46:15 112:80
a hurry	112:36
in _ hurry	46:18 112:33
hurry $	46:18 112:17
can wait	86:-8 107:19 112:78 113:-14
job _ can	105:14 112:13
#n _ wait	112:11 113:8
wait $	11:32 12:41 15:-8 112:77
@job _ wait	112:48
not urgent	112:40
no hurry	46:17 112:44
is _ hurry	112:18
no _ about	37:18
hurry _ job	112:8
hurry _ the	112:8
hurry with	112:37
no _ with	81:12 112:62
hurry _ @job	112:30
urgent any	112:21
urgent _ more	112:21
#n _ as	123:30
@job as	16:10 73:11 112:33
the _ as	73:11 112:33
@job _ usual	112:33
#n as	17:-8 41:38 42:49 53:8 72:12 92:19 94:38
job _ as	42:54
^ after	92:8 113:63
after job	113:52
after _ job	113:13
other==	2:10 6:10 35:20 49:-12 83:11 91:19 111:12 113:28 116:20 123:-15
more ~	113:9
other	6:10 14:25 17:-9 35:20 49:-12 82:-12 83:25 91:39 111:12 113:28 116:30 123:-16
other job	83:11
after @job	15:15 113:34
after _ other	6:11
wait _ @job	113:8
must wait	113:13
wait _ job	42:-8 113:61
wait==s	113:57
#n wait	113:41
come after	13:23 92:17 113:9
after the	6:9 16:-11 24:9 113:36 114:24
#n _ after	54:9 113:10
come _ the	116:10 117:8
after _ @job	113:37
goe after	113:22
goe _ @job	16:23
@job _ after	113:16
goe _ job	113:10
come _ job	113:8
#n befor	0:43 16:8 38:12 113:21
befor _ @job	113:30
@job befor	113:28
do _ befor	113:11
befor job	113:39
befor _ #n	113:39
the _ befor	0:43 16:9 62:11 113:11
befor @job	113:26
#n _ befor	40:-8 42:17 77:9 113:24 114:13
come befor	112:10 113:13
come _ @job	113:11
is befor	113:25
@job _ befor	113:19
then==	0:-11 13:-8 27:9 29:10 104:8 112:-18 113:53 114:16 123:10
then	0:-11 13:-8 27:9 29:10 104:8 112:-18 113:53 114:16 123:10
first then	112:-13 113:35
then job	112:-10 113:27
@job _ then	112:-10 113:26
first _ job	113:14
then _ #n	112:-10 113:27 114:16
first and	113:19
and then	113:19
then @job	113:19
first _ then	113:19
not begin	113:18
not _ job	17:20 63:-28 112:-13 123:55
befor _ is	62:11
not start	113:9 123:9
not wait	28:10 113:45 123:-10
doe _ wait	113:16
need not	3:9 28:10 37:9 113:29 123:-23
)~"
R"~(need _ wait	28:10 113:29 123:-9
@job _ longer	37:18
^ look	0:19 13:58 44:24 88:-8 114:53
look again	44:-8 114:82
on _ hour	44:-13 114:25
on yesterday	114:18
again _ yesterday	114:18
look _ at	17:10 114:11
on _ #t	51:-15 53:18 114:8
check job	93:11 114:19
check _ #n	40:12 93:11 114:26
again _ @day	114:9
check fret	40:12
look _ #n	11:10
look _ fret	44:-10 114:15
to yesterday	114:10
move _ recheck	114:8
delay==	57:12
delay	57:11 116:-8 117:45 118:19
delay the	57:12
@job until	36:11 113:22
put _ the	0:10 9:24 10:-8
put _ recheck	114:13
postpon==e	114:10
postpon	114:10 117:19
^ postpon	114:10
postpon recheck	114:8
postpon _ of	114:8
to _ morn	114:10
@job till	96:14 113:22
i shall	99:10 114:22
shall check	114:15
i _ check	109:25 114:15 123:16
shall _ job	114:11
we _ look	114:-10 123:26
this _ i	4:13
at _ i	114:8 118:14
^ yesterday	35:14 49:-9 69:-11 73:11 94:17 96:11 114:10 115:10
yesterday i	35:15 49:-9 69:-10 73:11 114:10 115:10
remind==	11:24 114:10
remind	11:24 114:10
^ remind	11:24 114:10
remind me	11:24 114:10
me of	114:10
remind _ of	114:10
of _ recheck	114:10
@wire order	9:-8 31:22 116:48 117:-11 118:15
order #n	10:-10 31:-11 47:-9 49:-22 115:39 116:76 117:79 118:67 119:-9 123:26
stick each	120:14
order _ #c	115:11
order _ wire	31:8 117:11
order #c	31:-9 115:30 116:23 117:20
order _ coil	49:-14 115:29
from _ due	115:17
order _ stick	115:12 120:10
at _ due	11:15
#d _ due	115:13
order a	49:-17 115:27
order #d	115:24
due #o	12:27
order _ mm	115:13
order _ g	115:9
order _ gram	115:9
order _ ~	119:60 120:-10 121:53 123:-9
order _ on	117:17
have order	115:12
we _ order	10:11 31:-8 115:8 118:-9 119:26 120:9 121:10
order at	10:11 116:10 118:26
put in	0:10 71:11
in _ order	27:20 101:10
from _ with	119:11
put an	38:13
for _ stick	49:-14 115:25
with _ from	0:22
on _ with	38:12
^ sent	115:12
sent _ an	115:12
plac==ed	37:14 49:-11 71:14 74:9 88:10 115:16
plac in	71:14 74:9
^ arriv	116:18
arriv order	116:10
#n order	10:12
arriv _ #n	116:10
wire _ order	9:-8 32:31
order _ was	116:-8 117:10
#n _ order	50:18 116:20
order is	31:-11 117:18 118:31 120:20
here in	119:14
order _ here	116:35 117:-9
order came	116:17
came at	116:10
came _ #t	116:10
has arriv	98:14
order _ arriv	116:13
order _ came	116:17
came yesterday	49:12 116:9
#n arriv	116:32
arriv in	115:11
order _ is	116:19 117:23 118:21
~ came	116:21
from _ came	116:21
here tomorrow	28:25 109:9 117:22 123:-9
from _ is	40:-8 77:11 120:21
here _ at	116:8
~ arriv	116:16
from _ arriv	116:16
~ has	120:17
arriv tomorrow	116:8
arriv _ at	116:8
^ rest	116:30 117:39 118:28 123:-9
rest arriv	116:9
rest came	116:10
rest is	17:-11 44:10 116:28 117:11 118:16 123:-8
rest _ here	116:10
rest _ @wire	116:9
rest _ order	116:-18 117:21 118:12
stick have	116:23
have arriv	116:10
stick _ arriv	116:9
#c _ came	116:18
#n _ came	40:13 49:44 116:17
stick _ yesterday	116:11
coil==s	49:9 116:13 119:10 120:15
coil came	116:14
came rest	116:10
rest come	116:10 117:11
rest _ on	116:9
come _ #r	117:11
other==s	14:26 82:-8 83:14 91:20 116:9
are _ other	14:26
#n _ other	113:24
come #o	16:20
stick _ and	49:11 65:10
and _ come	13:25
come _ of	5:34 72:18 74:-8
rest _ com	117:14
came noth	116:8
noth more	116:16
more is	116:16
stick _ noth	5:10 22:-9
came _ more	116:8
noth _ is	116:16
more _ com	116:16
arriv noth	116:8
arriv _ more	116:8
arriv and	116:17
and that	52:11 92:31 116:19
arriv _ that	116:17
that _ all	116:31
stick _ order	116:19
#n _ rest	63:10
#n _ come	41:-11 44:14 123:19
came _ the	70:23
rest _ next	117:10
come and	19:9
order _ and	10:15 29:-9 31:9 116:10
rest on	116:12
#c _ order	116:10
receiv order	116:39
receiv the	116:23
receiv _ order	116:23
got order	116:24
got _ from	69:11 116:10
got the	1:-10 10:8 16:12 26:34 31:-10 35:26 40:9 69:-9 71:10 81:14 101:21 116:29
got _ order	31:-9 116:17
the delivery	19:15 72:11 116:14 117:12
delivery came	116:23
came from	116:10
delivery _ from	116:10
came _ ~	116:10
delivery from	116:17
delivery _ ~	116:17
parcel==	49:15 116:76
parcel	49:15 116:76
a parcel	116:10
parcel from	116:17
a _ from	51:8 53:-8 116:10 119:9
parcel _ ~	116:17
^ parcel	49:17
us the	6:9 116:18
deliver _ the	116:17
brought _ the	42:19
us _ of	115:14 116:14
#n _ them	71:16 74:-8 97:40 98:9 116:29
order promis	117:15
promis order	117:20
com only	117:9
@wire _ com	117:21
@wire will	117:14 118:9
will come	41:-11 117:30 123:20
today now	117:24
will _ only	117:9
only _ now	41:14 60:18
december now	110:26 117:17
com _ #o	117:10
instead==	18:17 35:17 41:10 45:-8 46:38 53:19 108:-16 110:10 116:-9 117:61
instead	18:17 35:17 41:10 45:-8 46:38 53:19 108:-16 110:10 116:-9 117:61
today instead	117:15
come _ instead	117:14
instead $	18:17 116:-9 117:61
@day now	46:32 117:30
next _ now	46:14 117:8
tomorrow instead	53:12
on _ instead	108:-11 110:12 117:18
#o now	117:19
order _ come	10:10
@day instead	108:-11 110:12 117:23
tomorrow now	117:17
com _ now	117:14
order _ will	117:14
will _ on	44:-9 53:10 107:28 114:12 117:13
~ will	117:19
from _ will	118:11
~ _ come	117:19
~ _ only	120:10
from _ come	90:10
com the	117:9
the _ instead	18:17 35:20
order _ only	117:12
postpon==ed	117:19
is postpon	117:10
order _ postpon	117:11
is mov	117:12
order _ mov	117:8
is _ till	100:10 117:13
order was	117:10
was postpon	117:9
postpon until	117:10
was _ until	117:16
postpon _ the	117:8
mov till	117:8
was _ till	117:13
late _ #r	117:8
delay==ed	117:52
was delay	117:18
delay until	117:24
#n _ postpon	117:9
delay till	117:8
#n _ delay	117:18
delay _ tomorrow	117:19
is delay	117:35
@wire was	117:11
delay to	117:20
@wire _ delay	117:29
rest will	118:31
december instead	117:14
order _ arrive	116:-8 117:11
arrive today	117:10
of _ arrive	117:8
~ ship	117:26 119:-9 120:12
deliver on	117:27
expect==	16:9 27:14 31:9 66:9 117:77
expect	16:9 27:14 31:9 49:-15 65:-13 66:8 115:-8 117:76 123:34
^ expect	49:-11 65:-13 117:78 123:34
expect order	117:26
expect _ #n	117:11
expect _ #c	117:15
expect the	117:32
expect _ @wire	117:30
@wire today	117:23
expect @wire	117:21
@wire next	49:-20 65:-13 123:50
cancel order	116:-14 118:56 123:34
cancel _ order	118:20
cancel _ from	118:11
cancel _ rest	118:31
order _ cancell	118:36
was cancell	111:11 118:13
cancell becaus	118:11
cancell _ ~	118:11
be com	47:16 118:8
com becaus	118:14
rest _ not	118:38 123:-12
not _ com	47:16 118:8
com _ ~	118:14
not com	61:8 118:56 123:-14
is _ com	61:8 118:56 123:-14
never==	1:8 17:-9 34:12 38:-11 49:16 54:10 92:29 96:10 108:33 109:-11 110:-10 118:12 121:9 123:90
never	1:8 17:-9 34:12 38:-11 49:16 54:10 92:29 96:10 108:33 109:-11 110:-10 118:12 121:9 123:90
will never	92:11 118:13
never come	92:11 108:33 109:-10 110:-9 118:13
come becaus	118:10
rest _ never	118:13
come _ ~	118:10
not _ becaus	118:15
the _ doe	11:-8 29:20 113:10
@wire _ not	38:-8 78:11 118:29 123:15
order _ not	118:20
pack==	32:44 48:-60 97:-59 119:104 120:19
defin supplier	119:71 120:-9 121:-13
pack	3:-11 9:-8 32:108 40:-11 41:35 48:-61 81:-19 97:-60 119:134 120:95 121:-15
pack length	48:-26 97:-12 119:36
#d pack	120:8
~ pack	48:-35 97:-17 119:49
pack #c	48:-9 97:-17 119:24
pack #n	48:-10 97:-14 119:37
pack mass	48:-9 97:-15 119:33
mm pack	48:-9 120:18
g pack	97:-9 119:21 120:-11
#c pack	97:-14 119:16
pack _ #d	48:-20 97:-9 119:34
name _ pack	48:-34 97:-14 119:49
~ _ length	48:-16 119:21
pack _ name	48:-9 97:-9 119:16
pack _ pack	48:-9 97:-14 119:10 120:17
pack _ #c	48:-10 97:-16 119:28 120:15
pack _ #n	119:31 120:28
#n _ pack	119:25
#c _ pack	97:-12 119:37 120:-22
lead _ #n	119:13 120:23
minimum==	32:39 50:19 97:-12 120:82
supplier name	119:12
minimum	32:39 50:19 97:-12 120:82
mm _ length	80:14 84:12
#d _ pack	97:-9 119:32 120:-14
#c _ minimum	119:-10 120:14
minimum _ #d	119:12
#n minimum	97:-9 119:10
minimum #n	120:10
in pack	32:18 97:-9 119:34
supplier _ pack	119:-11 120:16
pack _ minimum	32:35 119:10 120:-22
minimum _ pack	119:-13 120:19
supplier _ name	120:10
pack==s	3:-11 32:64 40:-11 41:35 81:-19 119:30 120:76 121:-9
a supplier	119:64 120:-16
pack of	81:-9 119:24 120:46
stick pack	119:18 120:-13
pack #d	3:-10 40:-11 41:36 119:14 120:-12
)~"
R"~(#d minimum	119:13 120:-13
day pack	119:-9 120:9
minimum of	120:27
coil pack	119:22 120:-19
add _ supplier	119:19
pack _ mm	3:-10 40:-11 41:36
pack _ in	119:8
pack _ stick	119:12 120:-10
pack _ coil	119:25 120:-25
supplier call	119:27 120:-11
stick minimum	119:-11 120:11
defin _ supplier	119:20
call _ pack	119:11 120:-11
#n _ minimum	119:-15 120:15
of _ pack	3:-10 40:-11 41:35 119:19 120:-19
pack _ g	119:-8 120:9
pack $	32:33 119:-10 120:19
add supplier	119:16 120:-16
coil minimum	119:-9 120:9
of _ minimum	119:9 120:-9
minimum _ mm	119:8 120:-8
minimum _ #n	120:11
new supplier	57:-8 119:57
can order	119:29 120:9
can _ from	119:30
from _ now	119:41
from now	29:-8 51:14 54:54 56:18 57:36 60:16 98:21 100:-11 102:31 119:14 120:14 121:-12
amount==	9:14 120:12
chang supplier	120:14
~ any	119:-8 120:18
amount	9:14 65:11 120:12
any amount	120:12
any pack	120:15
pack ~	120:15
chang _ pack	120:12
supplier _ any	120:9
any _ ~	119:-8 120:19
~ _ pack	120:17
pack _ supplier	120:12
name _ supplier	120:8
lead of	119:-8 120:14
time #n	97:12 119:11 120:10
time _ day	119:14
#c _ lead	119:-8 120:8
stick _ time	120:17
~ sell	119:-14 120:29
sell wire	119:-8 120:14
supplier _ sell	119:-13 120:34 121:-8
~ _ wire	119:-19 120:29
sell _ pack	32:19 119:8
sell in	32:20 119:11
supplier _ deliver	120:19
sell _ in	120:9
wire _ pack	119:-11 120:15
wire only	119:-9 120:13
only in	110:24 119:-10 120:14
supplier _ ship	120:9
only _ pack	119:-10 120:15
deliver wire	120:8
only pack	120:9
ship _ pack	120:8
^ pack	32:27 120:15
pack from	120:15
~ are	120:21
pack _ ~	120:29
from _ are	120:10
the pack	120:27
pack at	32:11 120:8
at _ are	120:8
~ hold	120:8
^ minimum	120:18
minimum _ ~	120:46
the minimum	32:10 50:20 120:28
minimum from	120:13
minimum at	32:10 120:9
^ lead	120:17
a year	22:22 60:11 120:20
is _ year	120:20
year $	19:-11 20:39 21:42 22:18 105:-9 118:36 120:18 123:26
take _ day	119:9 120:27
day now	111:11 120:37
need _ day	120:21
#c week	120:8
ship in	119:9
from _ take	120:11
~ _ any	120:18
amount $	120:8
deliver any	120:12
no minimum	120:29
supplier _ has	117:13 120:15
~ _ no	120:17
has _ minimum	120:17
minimum $	32:32
supplier _ is	120:13
~ _ call	120:13
drop supplier	121:53
drop _ supplier	121:28
remov _ supplier	121:17
remov supplier	121:38
anymor==e	47:27 99:11 111:10 120:9 121:22 123:-22
longer order	121:37
anymor	47:27 99:11 111:10 120:9 121:22 123:-22
~ anymor	121:29
no _ order	121:37
longer _ from	121:37
from _ anymor	121:29
anymor $	111:10 120:9 121:22 123:-10
we not	2:9 121:18 123:-9
not _ from	72:-21 121:43 123:22
from _ any	120:9
~ _ more	121:12
undo==	29:-9 30:-8 34:56 122:158 123:55
undo	29:-9 30:-8 34:56 122:158 123:55
^ undo	122:138 123:-13
undo $	122:88 123:-11
take it	34:10 56:13 85:27 99:19 122:42
it back	34:13 94:12 122:45
take that	56:10 103:14 111:8 121:14 122:24
that back	111:8 122:29
undo that	34:-19 122:28 123:64
undo it	122:48
take back	52:-13 111:22 122:27
back _ last	122:28
last one	122:12
suit $	18:84 73:-11
lot $	5:12 7:9 19:24 23:25 80:9 82:-8 83:60
help $	2:10 6:-26 34:63
hold $	18:18 23:107 34:-9 36:40 83:-16 123:-10
measur $	0:-11 4:36 40:44 75:12 78:24 79:-9 123:11
receiv $	49:12 103:18
extra $	53:23
receiver $	34:13 55:39 56:65
weigh $	66:10 123:36
new $	5:-8 70:23 94:17
size $	73:31 87:24
width $	75:27
several $	34:16 39:-9 80:29 81:41
after $	13:25 113:22
,==	0:31 1:13 2:36 3:32 4:16 5:31 7:17 12:32 13:11 14:12 16:22 17:10 18:24 19:29 20:18 22:14 23:19 26:-8 27:37 29:13 30:27 33:15 34:26 36:25 37:-21 38:40 44:11 45:55 47:14 48:52 49:22 50:-47 51:-30 53:39 55:16 57:50 59:-15 61:12 62:16 63:-13 64:-12 68:23 69:-11 70:13 71:10 72:-15 73:-27 74:-34 75:8 76:17 78:41 81:-27 82:-24 83:-30 84:42 85:12 86:-14 87:-16 88:-28 91:-9 92:-18 94:8 95:-10 97:38 98:-11 99:10 100:16 102:-16 103:-13 104:15 105:-11 106:-29 107:15 112:-31 113:-42 114:-14 115:10 117:-21 118:-13 119:22 122:27 123:-49
,	0:31 1:13 2:36 3:32 4:16 5:31 7:17 12:32 13:11 14:12 16:22 17:10 18:24 19:29 20:18 22:14 23:19 26:-8 27:37 29:13 30:27 33:15 34:26 36:25 37:-21 38:40 44:11 45:55 47:14 48:52 49:22 50:-47 51:-30 53:39 55:16 57:50 59:-15 61:12 62:16 63:-13 64:-12 68:23 69:-11 70:13 71:10 72:-15 73:-27 74:-34 75:8 76:17 78:41 81:-27 82:-24 83:-30 84:42 85:12 86:-14 87:-16 88:-28 91:-9 92:-18 94:8 95:-10 97:38 98:-11 99:10 100:16 102:-16 103:-13 104:15 105:-11 106:-29 107:15 112:-31 113:-42 114:-14 115:10 117:-21 118:-13 119:22 122:27 123:-49
#n ,	0:45 1:-16 2:31 5:14 9:-9 10:-11 12:-9 13:41 15:-16 16:-15 17:19 18:34 22:-24 23:9 24:13 27:-24 32:-14 33:14 34:-11 35:-34 37:-16 38:-10 39:31 40:40 41:17 42:-15 43:13 44:-8 45:8 46:16 47:-25 48:-11 51:30 52:-12 53:-26 57:-10 63:27 65:20 67:-8 68:12 69:36 70:21 71:8 72:22 74:35 75:10 76:13 77:-17 78:-16 80:9 81:26 83:-11 84:-27 88:17 89:-10 90:35 92:8 94:13 95:27 96:13 97:14 98:-9 100:10 101:-10 103:-14 104:-23 105:10 106:-12 107:-31 108:-34 109:-9 110:29 112:-20 114:-8 115:-12 117:18 118:8 119:-32 122:-10 123:-24
, slot	0:32 1:-8 4:-31 13:52 16:-8 18:-8 33:25 35:16 36:29 69:18 70:10 75:12 76:-10 79:-10 90:26 123:-10
, what	0:39 2:-14 5:41 9:13 11:40 13:23 16:25 18:-10 19:-16 21:13 23:13 24:-13 30:20 32:-10 33:16 123:15
job _ ,	0:50 1:-19 2:-19 11:12 13:-19 16:8 17:-10 18:16 23:-11 24:-10 27:-11 29:29 30:11 33:-30 40:12 41:16 42:-14 44:36 45:-13 47:-11 63:35 64:10 69:22 70:11 71:15 72:9 73:13 76:62 81:-16 86:16 91:10 92:-34 93:9 94:-16 95:30 96:-11 107:-20 112:-9 113:16
, _ #n	0:12 1:-31 4:-24 5:9 10:10 11:-14 12:20 15:-16 17:16 23:18 24:-10 27:9 28:-8 29:-14 30:12 33:11 35:20 36:9 37:-13 38:-10 40:-48 41:22 42:-25 43:23 44:41 45:10 47:-20 48:12 49:-9 53:15 63:-13 64:-8 71:-9 72:-12 74:20 75:16 77:30 78:8 79:-17 80:-10 84:20 86:-11 88:33 89:61 90:15 91:28 94:15 97:8 98:-9 103:15 106:-16 107:-14 108:27 112:-20 114:-12 115:16 119:29 120:-17
slot _ ,	3:-33 4:13 5:-8 27:8 33:39 45:38 69:-23 74:46 75:12 79:-10 80:-8 81:19 84:-9 90:-8 96:15
#n _ what	0:32 13:16 16:14 123:20
, _ have	0:27 8:-10 40:-10 65:10 91:10 97:12 109:-10 119:14 123:9
^ need	0:30 7:14 8:-10
a fret	0:13 3:24 13:44 40:-8 123:-13
- @job	0:13 1:-9 3:-12 4:11 5:20 6:-11 11:-8 13:18 15:12 16:-13 17:10 24:8 27:26 29:24 33:25 35:-14 36:11 37:-8 40:13 41:-8 43:-9 44:-13 45:8 46:-9 47:26 63:14 70:-16 72:19 73:9 80:-9 81:-8 82:11 83:-11 86:20 90:-10 92:-9 93:8 106:17 113:27 123:-11
need _ fret	0:21 4:17
#n _ which	0:16 24:33 26:8 95:14
a short	0:9 41:15
short #n	0:9 41:15 74:10 108:-9
#n that	0:24 17:14 38:8 71:11
#n _ would	0:24 16:14
?	0:93 1:-10 3:137 4:24 5:19 6:-21 7:-14 8:138 9:138 10:-54 11:96 13:105 15:101 16:158 17:101 18:30 19:65 20:-27 21:44 22:68 23:56 24:34 25:79 26:101 27:66 28:72 29:109 30:82 31:68 32:44 33:87 34:90 35:-49 36:-32 37:-30 38:-25 39:-48 40:-29 41:-21 42:-33 43:-53 44:-32 45:-9 46:-41 47:-24 48:-10 49:-16 50:-23 51:-13 52:-18 53:-26 54:-20 56:-13 57:-12 58:-13 59:-11 60:-13 61:-14 62:-14 63:-42 64:-29 65:-14 66:-11 67:-11 68:-17 69:-13 70:-12 71:-21 72:-15 73:-21 74:-28 75:-18 76:-44 77:-23 78:-15 79:-17 80:-17 81:-13 82:-34 83:-19 84:-21 85:-41 86:-31 87:-25 88:-78 89:-20 90:-32 91:-26 92:-19 93:-44 94:-27 95:-16 96:-31 97:-14 98:-21 99:-13 100:-36 101:-22 102:-16 103:-18 104:-21 105:-30 106:-39 107:-29 108:-19 109:-44 110:-17 111:-22 112:-47 113:-27 114:-22 115:-17 116:-22 117:-31 118:-19 119:-14 120:-23 121:-10 122:-38 123:142
would make	0:22
make a	34:10
that _ make	0:19 122:10
inch==es	0:16 1:13 54:49 67:12 84:13 123:-8
@wire ,	0:65 1:61 5:64 7:-11 8:33 9:41 11:-9 13:-9 16:-8 18:27 19:10 20:-10 22:-19 27:-8 29:-14 30:-9 32:-17 33:24 34:-11 38:47 41:-17 45:8 49:12 65:27 66:18 67:9 71:-8 78:11 80:-10 84:-15 87:14 97:-11 107:-8 115:16 117:-8 118:19 119:-13 120:-10 123:-18
, finish	0:21
inch	0:16 1:19 54:49 67:12 75:17 84:13 91:13 123:-8
#d inch	0:17 1:14
inch ,	0:20
, anyth	0:32
@wire _ finish	0:21
, _ length	0:19 7:15 48:11 71:16
length _ inch	0:21 54:30
#d _ ,	0:8 3:10 7:8 18:11 35:33 36:11 41:13 48:9 49:-14 54:9 67:16 68:11 71:11 77:14 79:-15 81:-10 91:-13
which bit	23:23
@job ,	0:41 1:-26 2:54 3:14 4:37 5:-17 6:-8 12:-8 13:85 14:-8 15:55 16:44 17:29 18:9 23:-12 27:-32 29:-38 30:-11 32:-11 33:-9 34:-11 35:22 36:-8 38:-9 45:-13 46:9 57:-8 63:15 64:23 69:-27 70:16 71:22 73:-10 78:-8 79:-15 81:34 86:-12 88:-17 90:14 91:11 92:29 95:-8 96:31 97:-9 106:36 107:-9 113:-9 122:-8 123:-20
)~"
R"~(bit _ @wire	1:17 22:49 38:-15 78:22 81:10
the _ ,	0:12 3:-31 4:15 5:-11 6:10 8:23 9:8 10:-9 12:-9 15:-10 16:37 17:-15 18:-13 21:-11 23:-13 26:-18 28:26 30:-15 31:-10 32:-20 33:22 34:-19 35:-18 36:-8 37:-8 38:11 39:20 40:45 41:-14 43:-9 45:9 47:25 53:12 54:-9 56:-14 57:16 60:-14 63:-14 64:38 66:9 68:36 69:-10 70:-9 71:-10 75:8 76:10 77:-10 78:34 79:-13 84:8 86:-12 87:15 88:-29 89:41 90:17 94:-9 96:23 99:36 100:-10 101:15 103:-8 106:43 107:-34 111:-16 114:-9 115:-10 117:-8 118:26 119:-9 121:-16 123:-32
slot ,	0:9 4:9 74:-9 94:10
#o _ ,	0:27 44:33
, _ piec	0:32 37:12
^ and	0:77 1:-9 4:-14 8:25 9:16 11:36 13:-25 14:-10 16:15 17:52 18:-10 19:-11 20:-23 21:68 23:75 27:86 29:-23 30:29 32:-8 33:-28 34:-8 35:35 37:-10 38:-8 39:-10 42:-15 43:-10 44:-14 46:27 49:-16 51:-10 58:18 65:41 69:10 74:57 80:-19 81:-19 82:-22 83:-9 85:-19 88:-22 89:32 90:-13 91:50 94:-22 95:-17 96:-16 98:-9 104:18 107:-8 113:-15 115:37 116:-10 123:-12
same==	0:84 1:20 4:45 5:-8 6:30 7:-8 11:-9 13:20 16:41 18:-14 20:-17 22:9 23:-20 27:-8 28:-11 33:-9 36:-20 37:-9 38:56 42:-30 46:-10 47:-9 48:-10 58:9 59:-9 63:-11 64:-8 72:19 73:71 82:34 83:-24 88:16 90:-8 94:40 104:-10 106:-15 107:-13 108:11 112:38 113:-15 123:-15
same	0:84 1:20 4:45 5:-8 6:30 7:-8 11:-9 13:20 16:41 18:-14 20:-17 22:9 23:-20 27:-8 28:-11 33:-9 36:-20 37:-9 38:56 42:-30 46:-10 47:-9 48:-10 58:9 59:-9 63:-11 64:-8 72:19 73:71 82:34 83:-24 88:16 90:-8 94:40 104:-10 106:-15 107:-13 108:11 112:38 113:-15 123:-15
^ same	0:93 1:26 4:57 6:-27 13:-51 16:53 17:-12 18:-10 23:-17 35:-12 36:-18 38:57 42:-13 48:-10 72:22 82:39 83:-20 104:-9 106:-11 107:-10 112:62 113:-9
same for	0:45 1:-8 4:61 6:33 13:41 16:46 17:-9 18:-11 20:-15 23:-14 36:-12 42:-13 72:-13 82:43 83:-19 104:-8 106:-11 107:-9 112:49 113:-9
same _ job	0:67 4:-11 6:-12 13:-10 16:-11 72:-8 82:79 112:-10
even==	0:22 1:17 20:9 123:-9
, even	0:23 1:13
even if	0:12 1:17
nip a	0:21
a lot	0:18 1:18
lot off	0:21 1:8
, _ if	0:21 1:13 30:8
if _ have	0:13
nip _ lot	0:21
mind==	0:15 37:21 47:22 104:11 123:61
mind	0:15 37:21 47:22 104:11 123:61
never mind	0:8 123:66
the wast	0:8 39:16 80:9
#n _ never	0:9
never _ the	0:9 1:10 38:-10
, pull	0:22 71:-9 74:-10 94:10
are fine	0:11 101:14
, _ fret	0:18 2:46 3:-8 13:-14 17:-8 27:10 40:20 41:11 44:9 45:41 69:-8 74:8 92:8
pull _ are	0:48
are _ too	0:10 11:44
too $	0:21 1:9 2:25 14:9 57:40 86:24 88:-8 89:47 93:10 95:8
includ==ed	0:10 11:10 14:9
any piec	0:30 36:-9
, old	0:8 14:9 77:16
old pull	38:8 78:9
pull one	0:22 71:-9
includ	0:39 8:9 11:12 14:57 19:14 31:8 52:14 77:-9
, _ pull	0:11 71:16
includ $	0:10 11:10 14:9 52:15
, #o	0:13 41:10 52:15 64:10 75:19
#o fret	0:29 3:9 17:-12 35:33 40:8 41:20 77:15 92:-10 95:9 96:10
fret ,	3:-14 27:35 30:31 35:-9 36:16 40:11 43:8 45:38 69:8 81:-10 84:9 91:12 92:-8
, is	0:25 3:17 8:9 17:8 18:11 62:11 87:9
, _ ther	0:23 3:10 8:10 17:-9 90:9 92:8 98:11 107:17
#n _ about	0:18 91:11
.==	2:-8 3:8 4:-12 8:-8 9:-10 11:-23 13:-25 16:-20 17:-16 18:-10 19:-8 22:-8 23:-17 24:-9 25:-9 26:-20 27:-10 28:-8 29:-19 30:-9 32:-13 33:-17 35:15 36:29 38:9 40:-8 41:10 42:14 44:15 46:-11 47:8 49:11 51:-9 52:20 54:11 55:28 56:16 63:-15 68:13 69:14 73:9 76:40 78:19 80:8 82:27 83:30 84:28 86:-12 87:-11 88:-28 90:8 94:-15 97:19 98:-15 99:28 100:-25 104:39 105:34 106:22 107:11 112:-9 113:-11 114:-13 116:11 117:26 118:30 119:40 120:-20 121:14 123:-37
am on	106:34 107:-9
.	2:-8 3:8 4:-12 8:-8 9:-10 11:-23 13:-25 16:-20 17:-16 18:-10 19:-8 22:-8 23:-17 24:-9 25:-9 26:-20 27:-10 28:-8 29:-19 30:-9 32:-13 33:-17 35:15 36:29 38:9 40:-8 41:10 42:14 44:15 46:-11 47:8 49:11 51:-9 52:20 54:11 55:28 56:16 63:-15 68:13 69:14 73:9 76:40 78:19 80:8 82:27 83:30 84:28 86:-12 87:-11 88:-28 90:8 94:-15 97:19 98:-15 99:28 100:-25 104:39 105:34 106:22 107:11 112:-9 113:-11 114:-13 116:11 117:26 118:30 119:40 120:-20 121:14 123:-37
#n .	35:24 36:16 38:-9 39:8 46:-9 47:-12 64:10 69:-11 70:-11 74:16 76:57 78:25 88:-9 90:21 91:22 92:13 107:28 112:-11 113:-9 123:-10
. which	1:8
am _ the	9:29 106:38
- _ ,	0:15 2:-13 15:25 16:16 33:-9 34:13 51:-12 53:15 73:9 91:10 108:19 110:-8 112:8
dig==	0:17
dig	0:17
me out	0:27 8:19 71:-9
out a	0:17 2:13 79:-10
me _ a	0:17 112:9
out _ piec	0:12 35:18 123:11
piec _ @job	0:16
drop==s	0:12 50:25 53:21 121:13
a dress	0:9 1:10
dress #n	0:9 1:10
millimetre==s	0:27 3:32 7:20 18:13 40:16 54:24 87:20 91:11 123:-10
, #n	0:74 1:-12 3:-29 5:-21 6:17 7:21 11:8 13:-26 15:-8 16:53 17:-21 18:8 20:-8 22:23 23:-12 24:-8 27:40 28:46 29:19 32:-8 33:-18 35:-24 36:-15 37:-15 38:25 39:-12 41:-28 43:11 44:34 45:30 46:11 47:-8 51:-22 52:-11 64:-8 65:8 66:23 69:-42 71:-8 72:-9 74:25 75:-17 76:11 77:-13 78:29 79:34 81:48 84:36 88:-12 89:-13 90:17 92:-47 95:10 96:29 97:24 98:11 100:-19 103:8 104:25 106:-9 107:-10 108:-32 110:20 112:-10 113:-10 116:-17 117:-10 119:-9 120:35 123:-22
millimetre	0:27 3:32 7:20 18:13 40:16 54:24 87:20 91:11 123:-10
#n millimetre	0:21 3:37 7:11 87:21
anyth _ ,	0:40
, _ millimetre	0:36 40:17 91:12
millimetre $	0:49 1:-11 54:24 87:21 123:-9
cm==	0:35 38:19 40:15 50:23 65:-8 66:-10 67:13
cm	0:35 38:19 40:15 50:23 65:-8 66:-10 67:13
#d cm	0:35 38:21 40:15
cm of	0:36 38:13 66:-9 67:13
, do	0:36 1:-12 3:23 8:-12 9:12 15:10 33:8 37:-18 39:10 68:-12 100:16 123:32
have it	0:48 16:8 30:16 33:13 37:9 40:-10 64:21 91:10 99:-9 114:14 119:14
cm _ @wire	0:36 38:13 66:-9 67:13
of _ ,	0:19 3:13 4:-10 9:16 13:-11 16:9 17:11 19:-9 21:9 26:12 31:13 33:14 34:15 37:9 38:-18 46:-16 49:-33 56:9 57:12 58:13 66:20 67:17 68:-10 69:-20 71:30 76:-8 77:-8 78:23 79:9 81:22 87:18 94:-11 97:8 99:-10 104:8 107:8 111:-9 116:28 121:16 123:-21
, _ we	0:38 2:9 65:-8 120:12 123:11
hand==s	0:18 8:9 14:9 15:15 63:19
hand	0:15 8:95 9:-9 10:9 13:-9 15:37 17:-8 28:-9 29:-16 33:-8 57:15 63:27 65:16 68:37
^ hand	0:19 63:11
hand full	0:19
, job	0:-13 1:-8 3:18 4:-13 5:16 11:-11 13:15 15:-12 16:23 17:32 18:16 23:25 27:16 30:-11 33:-9 36:-11 41:23 42:-16 43:29 44:22 47:-16 63:-8 64:-15 76:-14 88:55 89:32 90:18 91:15 92:9 94:23 95:13 104:-10 106:-11 107:-8 112:-15 113:-19 114:-8
for _ ,	0:15 1:-14 2:33 3:16 4:-9 5:-19 6:24 9:-8 16:9 22:9 27:-10 28:-12 29:-28 31:18 36:-14 45:15 49:15 57:8 58:19 69:-13 76:11 79:-10 80:17 81:13 83:-8 92:8 98:10 105:12 107:39 118:12 119:13 121:11
replac==e	0:10 38:-9 79:10
^ if	1:-10 9:19 25:8 27:8 28:9 29:12 30:11 33:8 35:-17 41:-8 44:-8 88:-11 102:-8 123:102
@job had	0:10 71:11
had to	0:8 34:17 71:47 77:10 94:8 107:33 123:-8
come out	0:9 5:31 20:27 41:-21 71:10 72:18 74:-11 94:10 123:31
out ,	0:10 20:24 64:14 77:-8 94:11 120:12
replac	0:9 3:11 30:11 38:-10 79:10
the _ had	0:10 5:-9 70:8
had _ come	0:10 71:11 94:11
come _ ,	0:10 1:-10 32:10 94:12 97:10
out _ what	0:10 5:10
would _ it	0:10 15:11 84:12
here ,	1:12 34:13 38:13 114:12
, any	9:11 18:31
home for	1:22
for it	1:11 19:9 63:20 82:27 105:13
is piec	1:16 23:34
tin ,	1:12 5:-13 7:13 21:-9 22:28 33:13 38:9 71:-13 78:28 79:-15 80:12
, wher	1:63 4:22 17:11 20:11
would that	16:15
, _ would	0:-8 1:8 10:8 13:17 18:9 19:9 22:-10 30:9 43:-10 44:10 84:12 94:-9 101:10
wher _ that	1:15
, #d	0:-30 33:-9 35:-8 38:64 39:-10 40:15 41:22 45:-12 48:-10 67:24 68:20 71:17 73:17 74:-25 75:27 77:43 79:72 81:-11 87:23
, who	15:36 23:12 26:10 28:-12 29:20 33:27 57:12 62:11 123:-8
use it	101:9
, _ can	0:-9 30:11 42:20 64:17 100:9 101:9 112:19 118:12
can _ it	64:30 101:9 118:12
take piec	1:23 23:13
@job _ piec	1:28 35:-9
already==	1:24 10:9 11:36 13:54 15:8 23:15 38:-8 42:-8 43:-21 46:9 101:11 106:12 117:23 123:-14
#d ,	0:-15 1:-10 2:29 3:87 38:22 40:-20 45:-17 48:12 49:-8 74:-34 77:12 79:91 81:-9 88:-12 91:23 115:12
already	1:24 10:9 11:36 13:54 15:8 23:15 38:-8 42:-8 43:-21 46:9 101:11 106:12 117:23 123:-14
end already	1:28
already dress	1:18
, _ ,	0:-10 1:24 2:12 3:60 4:20 5:24 9:-9 11:-8 12:28 13:-19 15:9 16:-15 17:13 18:11 20:17 22:-8 23:-8 27:9 29:30 30:23 31:13 32:30 33:-15 34:-8 38:8 40:-9 41:-11 42:-11 43:-9 44:-15 45:-27 46:-9 49:-10 57:-14 65:-8 68:-8 69:-22 70:16 71:-9 76:-13 77:32 78:11 79:86 80:12 81:-10 84:-8 88:-15 90:27 91:-8 94:15 96:24 97:-9 100:9 102:12 104:-9 116:-9 120:-23
, _ end	1:23 2:-9 3:-9 27:17 30:-8 38:12
)~"
R"~(#n _ already	1:8 13:45 43:-20 123:-9
end _ dress	1:50
raw==	1:19 2:-9 3:14 38:21 79:8
a @wire	84:8
#d _ both	38:16
question==	0:-9 1:42 34:39 35:-8
question	0:-9 1:42 23:-12 34:83 35:-8
for piec	0:-18 1:53 35:-8
same _ for	0:-12 1:42 35:-8 72:34 82:-8
sorry==	1:54 29:-8 109:61 122:9
sorry	1:54 29:-8 109:61 122:9
^ sorry	1:54 29:-8 109:61 122:9
sorry ,	1:54 29:-8 109:61 122:9
, it	0:-12 1:26 3:-26 5:-10 18:-9 23:-16 30:-8 35:-8 36:29 37:13 38:9 39:-9 40:26 41:22 42:18 46:-8 47:-9 56:23 68:22 71:-10 75:-11 76:31 84:32 86:23 88:-18 93:31 100:13 101:15 112:26 118:10 120:23
, _ is	1:25 3:-30 8:15 9:8 11:-12 13:12 15:16 18:-9 23:32 26:-10 27:-8 28:-9 31:-12 33:-9 34:16 35:-19 36:28 37:12 38:9 39:-10 40:26 46:10 47:-8 52:13 56:23 61:8 68:9 71:-11 74:-8 75:-13 76:16 84:26 86:12 88:-23 92:-12 95:12 97:37 98:-9 101:12 107:15 122:-10 123:-8
it _ @wire	1:60
most==	2:13 16:11 24:11 54:10 122:34
go ,	38:12 61:23
most	2:13 16:11 24:11 54:10 122:34
it come	20:15 115:12
come off	1:13
end _ ,	2:-8 38:10 68:20 79:8
of _ come	67:14
it _ off	118:13
i used	34:14 123:16
used piec	0:14 1:-9 36:-9 69:10 81:-11 123:15
if _ used	123:17
i _ piec	0:8 3:41 22:54 39:-8 69:-12 123:-34
piec _ ,	0:-22 1:30 23:35 33:-8 35:-12 36:10 37:-24 39:22 68:29 69:8
#n _ wher	1:29 20:8
nearest==	1:18
, which	1:12 5:9 11:-8 15:18 17:12 18:8 24:29 25:11 26:22 27:8 28:-12 32:29 33:15 41:-9 88:-13 95:13 119:16 123:13
nearest	1:18
mm _ ,	0:-10 1:17 73:9 84:8 86:8
, _ slot	0:-20 1:35 4:37 5:-8 13:-9 35:16 69:9 73:-14 75:18 76:13 84:-9
i've==	1:8 2:-13 4:10 5:-8 13:-14 14:8 17:-12 20:-10 28:8 33:8 34:23 35:28 38:9 41:9 42:21 43:16 63:10 69:-10 71:-9 82:20 85:8 88:-9 95:21 106:38 107:30 113:-14 115:14 123:28
inch==	75:13 91:13
hand==	8:87 9:-8 10:9 28:-9 29:-15 57:16 63:8 65:17 68:37 107:9
i've	1:8 2:-13 4:10 5:-8 13:-14 14:8 17:-12 20:-10 28:8 33:8 34:23 35:28 38:9 41:9 42:21 43:16 63:10 69:-10 71:-9 82:20 85:8 88:-9 95:21 106:38 107:30 113:-14 115:14 123:28
^ i've	1:9 2:-11 10:8 14:9 17:-9 29:10 34:11 36:12 38:14 41:10 42:29 43:18 63:18 69:-9 71:-8 82:21 85:8 95:23 106:-12 107:-9 115:8 123:11
an inch	75:13 91:13
inch and	54:18 75:13 123:-8
and a	51:8 53:-8 78:11 87:15 95:10 103:13
a half	0:10 103:14
in my	10:10 26:19
my hand	10:10 63:20
an _ and	75:13 103:12 107:16
and _ half	0:10 103:14
@wire _ my	23:8
in _ hand	10:10 15:16
my _ ,	37:22 48:-10 82:11 87:10 103:10
or==	1:14 3:63 10:44 11:-14 17:46 18:22 22:10 25:39 32:11 40:-12 41:-17 42:-9 46:-14 64:8 78:15 91:-9 103:-9 123:28
a slot	0:-19 1:33 3:-8
or	1:14 3:63 10:44 11:-14 17:46 18:22 22:10 25:39 32:11 40:-12 41:-17 42:-9 46:-14 64:8 78:15 91:-9 103:-9 123:28
#n or	0:-9 1:23 78:9
or is	0:-9 1:22 17:17 18:15 25:13 42:-8
or _ it	0:-10 1:22 3:8 18:26 25:13 123:-8
long .	1:18 3:13 49:23
, _ long	0:24 1:15 27:36 32:28 49:22 84:10
#d _ .	1:17 3:13 39:-8 68:25 80:19
wher $	1:33 13:31 16:17 29:-10
to look	11:19 57:14 60:16 114:10 123:-9
have _ look	11:20 93:-13 114:9
tomorrow==	9:-11 11:45 14:-23 16:-11 23:-8 25:-16 26:67 28:91 29:47 30:-10 33:-14 44:-9 52:28 53:18 98:-8 100:22 101:-9 104:31 105:8 107:-19 108:-11 109:22 110:20 111:14 114:28 117:28 123:38
^ everyth	11:37 33:23 51:-10 72:19 74:-8
fall _ in	11:12
recheck on	11:22 44:13
under _ press	11:14 16:23
is _ promis	11:26 117:15
ahead==	0:-8 11:70 29:-9 35:19 56:18
ahead	0:-8 11:70 29:-9 35:19 56:18
and _ week	11:58
any recheck	11:63
long have	4:-8 8:-9 9:14 11:51 27:-16
clock==	11:31 16:15 17:-8 29:-19 61:10 84:12 96:11 104:19
clock	11:31 16:15 17:-8 29:-19 61:10 84:12 96:11 104:19
the clock	11:32 29:-10 61:10
on _ clock	11:33 29:-10 96:11
@job -	11:30 13:-13 16:51 17:-9 18:11
- promis	11:30 117:19
when $	9:24 11:24 25:-24 28:-23 29:56 30:18 31:18 33:31
day ,	13:9 14:-9 22:20 26:8 28:34 48:9 61:28 87:-10 102:18 112:9 119:10
#n _ ,	0:14 1:12 2:-21 3:-9 4:-12 5:-9 11:23 15:14 16:-27 17:-11 18:22 22:22 27:24 29:26 30:29 33:-21 42:60 44:24 45:35 49:39 52:46 53:-11 65:-11 66:-13 67:-8 68:-8 75:-8 76:-19 78:-8 79:-11 81:-16 83:8 84:37 88:-20 89:-10 90:-10 91:-13 94:-15 96:-12 104:23 106:-11 107:-12 114:12 115:38 116:-10 117:-8 119:15 123:65
, _ fall	11:11
wise==	11:23 17:13 25:-11 29:-8 97:26 99:33 100:29
press ,	11:14 16:-8 25:46 44:12 84:11 100:-12 101:18
wise	11:23 17:13 25:-11 29:-8 97:26 99:33 100:29
- wise	11:24 17:13
is _ ,	11:22 13:-11 14:12 17:-23 23:8 25:-8 29:-10 33:8 38:-11 39:-8 47:20 61:28 64:-12 68:-13 71:-8 74:10 76:32 77:15 79:10 84:18 86:-12 88:11 93:28 97:9 101:10 107:16 111:9 112:12 122:-10 123:22
, _ -	0:17 2:22 4:15 11:23 16:10 17:11 27:34 51:-18 53:14 108:21
wise $	11:24 17:13
drawer==	1:-21 3:-10 8:13 22:30 35:8 38:48 41:22 45:-11 71:11 74:-11 77:9 78:25 79:-8 81:8 95:-9 123:17
@wire drawer	8:14 22:22
the _ drawer	8:14 22:22
metre==s	9:-8 21:11 50:67 65:27 115:-10 117:-9 119:52 120:13 121:32 123:-10
metre	9:-8 21:11 50:67 65:27 115:-10 117:-9 119:52 120:13 121:32 123:-10
many metre	8:14 21:12
metre of	8:12 21:12 65:16
how _ metre	8:14 21:12
metre _ @wire	8:18 49:-8 65:16
meant==	0:30 8:47 15:20 31:19 35:-10 36:9 57:8 69:-8 119:10 123:11
no ,	0:26 8:46 16:67 36:61 46:30 88:-18 99:-8 100:26 104:-8 122:27 123:-14
, i	0:-17 1:-10 2:-18 8:43 9:-9 13:14 16:-11 17:-9 22:-8 30:-9 33:-9 34:-9 35:-15 38:-12 39:17 40:15 52:9 59:10 65:21 66:-13 67:9 68:15 69:14 71:17 73:20 76:17 78:13 84:10 91:17 103:8 109:-22 112:18 122:16 123:9
meant	0:30 8:47 15:20 31:19 35:-10 36:9 57:8 69:-8 119:10 123:11
i meant	0:33 8:47 119:10 123:12
no _ i	8:47 122:8
many bit	8:13
lying around	0:10
how _ bit	8:13
@wire piece	8:35 78:22
put by	8:16 23:16 82:18 83:17
did _ put	8:18 33:15
read me	8:19 33:11
what length	0:-10 4:44 8:19 22:-11
length of	0:-9 3:-15 8:19 22:-11 40:45 67:12 68:16 71:15 79:9 81:-11 119:9
lie in	8:19 22:-11 77:10 86:21
length _ @wire	8:19 22:-11 67:12
lie _ the	8:19 11:13 16:10 22:-12 86:16
accord==ing	8:13 17:10 24:10 112:12 120:10
ther be	1:10 8:14
accord	8:13 17:10 24:10 112:12 120:10
accord to	8:13 17:11 24:10
to you	8:15
should _ be	5:8 8:13 9:9 29:18 59:9
be _ the	8:13 97:34 105:8 119:16 121:19
on _ rack	8:12 38:33
you $	0:-9 8:14 34:9 37:19 72:9 113:22
pleas==e	4:-8 5:-21 6:45 8:30 9:-22 11:15 12:22 14:8 15:16 16:-16 17:26 22:13 23:28 28:-14 30:-12 31:37 32:21 33:10 34:29 36:18 40:8 41:-8 42:-28 43:-10 44:-13 46:-17 47:13 49:-12 51:-13 53:-11 54:12 56:50 57:16 58:19 59:31 63:-15 64:19 65:-10 69:-10 72:16 76:-13 78:-10 82:-11 87:-8 88:-10 89:-10 90:-15 91:-13 97:-8 102:-10 104:-13 105:13 110:-9 111:8 112:-9 113:-9 114:10 117:-12 118:10 121:8 122:28 123:-43
wire on	8:45 10:8 18:10 73:-11 99:-8 119:14
on hand	8:89 29:-24 65:18 68:37
pleas	4:-8 5:-21 6:45 8:30 9:-22 11:15 12:22 14:8 15:16 16:-16 17:26 22:13 23:28 28:-14 30:-12 31:37 32:21 33:10 34:29 36:18 40:8 41:-8 42:-28 43:-10 44:-13 46:-17 47:13 49:-12 51:-13 53:-11 54:12 56:50 57:16 58:19 59:31 63:-15 64:19 65:-10 69:-10 72:16 76:-13 78:-10 82:-11 87:-8 88:-10 89:-10 90:-15 91:-13 97:-8 102:-10 104:-13 105:13 110:-9 111:8 112:-9 113:-9 114:10 117:-12 118:10 121:8 122:28 123:-43
pleas $	1:-8 4:-10 6:54 8:33 9:-13 12:17 17:14 19:-8 20:18 23:9 29:13 30:-8 31:19 32:33 34:20 56:36 59:32 64:19 72:12 82:-14 83:-10 97:-15 99:15 104:-9 105:12 106:-8 107:-8 118:17 123:-11
in _ queu	8:-9 9:14 12:21
we left	8:-12 9:14
put on	9:24 10:-8 16:17 29:-9
wire order	9:23 10:-10 31:18
@wire we	8:-11 9:13 23:20 50:13 118:22
@wire _ have	9:15 50:13
, or	3:13 8:9 123:17
get more	9:10
@wire _ or	8:10
, _ should	9:8 15:8 22:16 29:-8 122:10
ring==ing	9:30
ring	9:38 112:9
supplier ,	9:30 10:31 32:-8 119:21
, _ do	2:27 4:12 9:29 16:-11 28:12 34:11 41:-8 99:19
do _ want	3:10 9:30 121:19 123:-26
get us	9:16
@wire _ us	9:29
^ shop	9:35 10:21 111:15
for wire	6:-8 8:19 9:26 10:34 20:-9 23:-9 28:-11 29:-8 31:23
list _ wire	6:-10 9:29 10:31 19:29 23:-8
many more	8:-16 9:30
how _ more	8:-16 9:30
more _ are	9:12 92:10
situation==	9:60
situation	9:60
eat==	9:18 50:11
eat	9:18 50:11
pass ,	16:36 54:13
, @job	13:-18 16:9 17:17 33:35 37:22 40:16 42:62 75:10 89:22 105:-8 107:37
next _ ,	11:10 16:10 26:11 28:14 30:32 52:8 105:16 109:-10 117:10
how hard	16:26 24:13
hard do	16:26 24:13
)~"
R"~(hard _ i	16:18
whol press	16:25
press schedul	11:-8 16:30 29:42 100:-10
schedul _ the	16:35 29:14
lb==	5:-10 16:42 43:34 45:-12 54:86 84:25 123:14
kilo	120:12
#n _ pass	3:24
the hollow	43:15 84:8 85:22 99:-8
hollow bar	16:9 43:12 85:31 99:-9
#n _ i	1:-8 2:-8 16:8 38:20 40:18 42:13 65:9 73:10
re==	2:58
re	2:58
to re	2:15
re -	2:58
to _ -	2:15 51:17
, _ load	24:10
load $	16:14 24:62
ram==	3:-11 16:43 25:-8 100:18
, if	41:11
ram	3:-11 16:43 25:-8 100:18
the ram	16:25
ram stand	16:17
, _ the	1:-12 2:-11 4:-10 6:8 13:-8 18:17 30:-9 35:32 36:-8 38:34 41:10 43:-9 45:-8 47:-15 54:15 55:17 57:22 63:16 70:22 71:-14 72:22 73:-14 77:11 81:-17 83:10 86:8 88:-11 91:19 99:18 100:-9 101:10 104:11 105:9 107:-8 110:20 111:-12 123:-16
ram _ #n	16:17
toward _ body	16:11
trebl==e	16:26 17:63 88:40
to _ trebl	16:23
@job side	17:11 88:57
how _ can	16:10 25:17
lean==	16:10
lean	16:10
, how	2:26 4:-10 5:40 8:52 13:34 16:25 19:-11 24:-10 25:20 27:25 32:25 34:23 41:-9 43:-19
and how	4:21 20:17 27:-13 30:-9 32:32
#n _ how	2:12 4:-8 5:20 13:22
, _ far	5:20 13:22
and _ much	9:10 16:8 20:18
much $	8:42 9:-8 16:10
no _ #n	0:8 15:16 16:76 35:14 46:-10 47:10 61:30 69:29 72:12 74:-9 88:-20 101:20 104:-8 105:25 116:9 123:-13
, _ to	0:-8 2:-13 16:65 18:9 23:11 24:8 27:-12 34:15 40:21 41:9 45:-9 49:15 51:-22 53:34 65:10 74:-13 86:13 100:-11 103:-9 104:30 108:-24 110:23 112:9 116:-10 121:12 123:25
same _ the	0:-18 4:73 6:-28 13:53 16:57 42:-8 82:-35 83:-12 106:-8 112:60
the short	16:38 41:-9 43:17 84:22 123:32
short bar	16:34 41:-9 43:28 84:18
with _ short	16:40 43:17 85:-21
^ pass	3:-10 16:29
, the	0:-8 2:-9 3:-25 11:20 12:30 17:-20 18:-10 20:-12 23:24 27:15 28:-8 29:-15 30:-14 34:8 38:-11 39:-11 40:9 42:-8 43:-10 44:36 45:12 46:46 47:21 48:-9 49:19 52:12 64:15 66:-27 69:-8 75:-10 77:21 84:8 86:-10 87:27 89:-8 90:-10 92:14 93:12 98:-9 99:-9 100:44 101:13 104:-8 105:-8 116:30 117:14 121:-9 123:28
, _ crown	3:-10 16:12 80:12 103:11
reading on	17:28
the edge	16:-10 17:15 41:14 44:32
edge next	16:-8 17:28
lay _ edge	17:17
, next	10:14 16:20 17:24 26:11 28:27 30:21 109:-8
, _ span	16:-8 17:52
?==	17:8 22:23 29:10 123:-13
^ good	17:10 101:14 117:9
good enough	0:-8 3:19 17:10
enough to	17:25
to call	17:25
enough _ call	17:25
to _ it	3:20 17:21 30:19 34:12 36:10 69:-10 96:13 98:10 123:-18
how doe	2:10 5:14 13:37 16:-12 17:12 27:-10 29:-10 34:57 74:-8
look ,	17:13 44:25
line of	17:16 91:11
^ whol	14:26 17:28 25:-8
so==	0:-21 1:-12 2:54 3:-17 6:-12 9:-15 10:-8 11:-9 14:14 15:-10 16:-11 17:35 18:10 19:-9 21:19 23:-8 24:9 27:-13 28:10 30:-17 31:-10 35:9 36:15 38:12 41:-12 43:-13 44:-13 45:-12 47:17 49:-14 50:8 51:8 54:10 56:10 57:10 58:10 59:9 62:-9 63:17 65:-8 67:9 69:-18 71:-10 72:21 77:-19 79:-13 81:12 82:16 84:-16 85:11 86:9 88:-15 89:-9 95:-10 98:22 99:9 102:13 103:-9 104:-10 105:9 109:-11 110:10 111:13 114:9 115:11 116:-12 118:25 123:-46
culprit==	17:48
so	0:-21 1:-12 2:54 3:-17 6:-12 9:-15 10:-8 11:-9 14:14 15:-10 16:-11 17:35 18:10 19:-9 21:19 23:-8 24:9 27:-13 28:10 30:-17 31:-10 35:9 36:15 38:12 41:-12 43:-13 44:-13 45:-12 47:17 49:-14 50:8 51:8 54:10 56:10 57:10 58:10 59:9 62:-9 63:17 65:-8 67:9 69:-18 71:-10 72:21 77:-19 79:-13 81:12 82:16 84:-16 85:11 86:9 88:-15 89:-9 95:-10 98:22 99:9 102:13 103:-9 104:-10 105:9 109:-11 110:10 111:13 114:9 115:11 116:-12 118:25 123:-46
^ so	17:47 35:12 71:-8
so which	0:10 17:46
which #n	6:13 17:43 50:17 88:-11 123:24
culprit	17:48
so _ #n	5:-8 17:47 37:8 41:9 45:-8 64:13 70:8 77:-8 98:24 117:8
any low	17:49
low fret	17:21 91:10
any _ fret	0:12 17:21
low _ on	17:49
rock==	17:51 57:11 74:-8 88:43 92:-11 123:24
did #n	17:45 24:12 88:-17 123:-14
did _ to	17:47 88:-16 123:-12
rock _ job	17:58 88:-17 123:-12
sunk==	17:49 88:44
sunk	17:49 88:44
or not	3:12 17:20 40:-10
not ,	3:9 17:20 25:10 30:9 93:23 111:8 123:-25
#n _ or	10:46 11:-12 17:20 46:-13 78:10 103:-8 123:27
or _ ,	17:20 26:11 78:19 103:-8 123:28
#n been	17:11 33:39 76:-20
been levell	17:16
ther still	17:16
job _ been	17:11 33:39 76:-20
tell us	17:20 34:18
tell _ about	13:28 17:13
span next	17:33
verdict==	17:30
verdict	17:30
sander==	8:-8 9:-8 11:-12 13:-11 14:-10 16:-13 17:-10 25:48 26:81 28:-15 29:16 30:-9 33:-14 34:-9 37:-11 42:-10 45:-11 47:-12 52:-8 53:-13 54:-8 64:-10 76:16 88:-8 97:-8 98:40 99:76 100:84 101:58 102:85 103:-11 104:47 105:80 107:-9 109:-13 112:-8 114:8 123:14
@job get	5:14 13:20 28:-8 29:22 72:27
@job _ work	28:-8 29:24
turn==	29:28 83:19 100:10
job _ turn	29:28 41:10
^ plan	5:12 29:30
agenda ,	29:61
agenda _ #n	29:43
, _ week	10:14 26:11 28:15 29:41 30:23 119:9 120:33
happen==ing	29:32
happen _ @day	29:31
on _ list	29:20 57:15 62:9 97:18 99:-8 119:14
still _ a	0:-8 13:23
want _ fret	13:12 30:17
#n yet	13:16 15:19 123:16
- what	13:17 123:-9
not _ with	13:18 28:10 85:15 117:11 123:-16
done _ #n	13:17 27:8 70:25 71:-8 74:9 94:20 123:-11
#n _ -	13:17 49:9 81:20 97:25 123:-11
- _ is	13:16 40:18 42:11 72:10 123:-9
is _ miss	13:17 33:11 123:-9
bound $	13:34
nut _ on	13:40 86:34 107:-8
fan==ned	3:-11 13:32 45:10
squar==e	3:-11 13:32 45:10
fan	3:-11 13:32 45:10
, and	0:-21 1:12 4:14 8:-9 10:33 11:-15 12:-11 13:10 14:8 16:-8 17:-14 18:13 23:8 27:-22 29:35 30:9 31:26 32:13 33:19 39:8 43:10 44:29 45:-16 49:10 60:9 62:8 65:8 84:-8 86:14 87:8 88:-8 92:8 94:-17 97:-14 98:10 101:8 120:8 122:-8
squar	3:-11 13:32 45:10
@job _ ,	2:11 3:11 13:19 15:12 16:12 29:-13 35:-9 36:9 43:-13 44:31 46:21 47:16 52:10 75:24 77:9 81:27 82:10 83:12 106:10 107:24 111:-8 112:10 123:-14
, put	35:43 38:9 49:16 61:46 62:-11 68:18 71:19 103:9
it in	21:8 35:34 38:8 41:11 94:16 114:28 123:12
, _ it	0:10 1:-36 11:-8 13:-11 17:9 23:17 33:-13 35:61 37:14 38:12 45:-10 47:15 48:10 49:-10 52:17 54:-10 56:29 57:-8 59:17 64:-12 66:8 67:-9 68:20 71:17 75:15 76:31 85:34 86:-8 88:-10 90:-11 94:11 97:14 99:23 100:9 103:10 105:-9 107:-12 112:8 118:9 122:27 123:-19
pop==ped	24:13 35:20
pop	24:17 35:20
^ pop	35:20
used the	0:-11 35:20 123:30
:==	0:11 1:-14 3:15 4:-23 5:-19 6:-9 8:19 9:-18 11:-14 14:-8 15:-8 16:8 17:-29 18:8 19:16 20:16 22:-9 23:-11 24:-9 27:-10 28:-8 30:-16 31:-8 32:-9 33:-13 36:-14 37:-14 38:16 40:30 41:13 42:-21 43:-9 44:24 46:-16 47:10 48:-22 49:29 51:58 55:29 59:9 61:25 63:-27 64:-17 65:39 67:10 69:9 70:13 72:33 73:24 74:24 75:35 76:15 77:-11 78:-8 80:-14 81:-8 84:33 85:-10 87:29 91:-10 92:12 95:15 96:-18 97:12 102:32 103:-10 104:-10 105:-8 106:30 107:-11 108:-9 110:10 112:-17 113:-16 116:-17 119:8 120:13 123:-36
:	0:11 1:-14 3:15 4:-23 5:-19 6:-9 8:19 9:-18 11:-14 14:-8 15:-8 16:8 17:-29 18:8 19:16 20:16 22:-9 23:-11 24:-9 27:-10 28:-8 30:-16 31:-8 32:-9 33:-13 36:-14 37:-14 38:16 40:30 41:13 42:-21 43:-9 44:24 46:-16 47:10 48:-22 49:29 51:58 55:29 59:9 61:25 63:-27 64:-17 65:39 67:10 69:9 70:13 72:33 73:24 74:24 75:35 76:15 77:-11 78:-8 80:-14 81:-8 84:33 85:-10 87:29 91:-10 92:12 95:15 96:-18 97:12 102:32 103:-10 104:-10 105:-8 106:30 107:-11 108:-9 110:10 112:-17 113:-16 116:-17 119:8 120:13 123:-36
#n :	0:-13 3:-16 16:21 18:20 35:12 40:8 41:12 42:-15 44:23 71:8 72:33 73:-16 75:24 76:27 81:15 82:9 91:-12 92:10 94:-8 95:19 106:37 108:-9 112:-10 113:-11 114:-9 123:-9
ago==	16:-8 37:21 38:8 42:8 43:32 44:32 49:8 69:15 71:-9 74:17 94:14 95:10 96:10 98:-11 101:32 103:-18 107:34 114:-11 123:-10
#n an	96:16
piec _ in	0:-8 1:-12 3:38 35:-10 123:16
an _ ago	37:23 43:8 49:10 69:19 94:20 101:12
yesterday==	0:-10 1:-10 16:-12 17:-9 33:17 35:12 37:-8 38:19 39:41 40:-10 42:13 43:25 44:-12 49:22 65:15 70:9 71:12 72:8 73:9 74:-8 75:-9 76:13 77:20 88:-8 94:27 96:12 115:11 118:9 123:16
put piec	1:9 33:29 35:12 69:-11
piec _ into	35:39 69:-19
^ piec	0:-10 1:14 33:-11 35:41 36:21 37:33 39:33 68:49 74:-10 81:-12 96:-10
that #n	1:9 35:24 85:9 96:11 98:28 117:31 123:-8
is ,	35:27 48:8 64:10 86:14
, in	13:19 15:15 18:-8 26:11 27:19 28:8 32:8 35:25 53:8 55:10 97:14
in it	4:26 35:25 53:9 71:10 97:14 119:10
it goe	35:25 39:11 93:9
that _ it	35:26 86:31 88:-8 92:30 107:19
it _ ,	13:-8 17:15 19:22 24:8 35:22 47:11 48:8 64:9 76:12 84:8 120:12 123:10
goe $	35:25 39:11
get piec	0:-9 1:8 35:21 36:-8
get _ #n	0:-10 1:8 5:9 35:21 36:-8
fret _ out	35:10 42:11 71:18
)~"
R"~(i've _ piec	35:18
set _ #n	35:8 46:18 103:19
might==	1:8 15:-8 33:-15 35:-22 47:-9 57:15 118:-21 123:128
later==	35:-21 67:11 107:29 123:26
might	1:8 15:-8 33:-15 35:-22 47:-9 57:15 118:-21 123:128
later	35:-21 67:11 107:29 123:26
later $	35:-21 107:29 123:28
did _ use	20:16 33:31
and wher	1:-9 16:17
did it	1:-9 5:9 20:14 33:8
who _ piec	33:24
piec _ and	33:9 39:12
and _ did	11:16 19:8 20:15
tin :	38:13
: #d	0:-10 1:-10 3:31 38:30 40:56 49:-10 65:39 66:14 68:-10 75:44
the _ :	17:-11 19:10 38:12 43:10 44:9 66:14 69:32 92:12
: _ ,	1:8 20:9 38:27 45:10 49:-10 65:11 71:9 86:9 94:14
, _ and	0:-8 2:18 3:-13 4:11 10:20 16:11 20:9 29:14 38:14 41:-14 43:25 49:-10 69:24 70:17 71:12 74:-10 78:-8 79:17 80:25 81:-11 82:13 88:11 91:-9 95:20 96:-33
^ into	78:11 79:-8
, @wire	0:-17 1:-12 3:-11 6:38 7:22 8:-14 9:-11 18:16 21:35 22:51 38:65 45:23 48:8 49:-12 79:-16
#d and	2:19 38:14 41:-9 69:9 71:45 77:8 81:-8
mm ,	0:-15 38:33 40:-11 41:8 45:22 49:-9 54:8 68:20 71:11 77:17 79:-14 81:-9 84:26 91:-8 115:11
, drawer	38:11
drawer #n	1:-20 38:50 41:24 45:-10 71:19 74:-10 77:10 78:42 79:-8 81:8 95:-9
, _ mm	3:-14 38:23 40:-8 41:11 45:13 65:21 75:11 77:17 84:13
- _ it	3:9 38:11
toss==	38:18 78:-8
"==	18:19 40:23 45:17 48:-16 78:-9 79:29 87:17 91:9
#p	16:-15 40:53 43:27 45:13 69:37 70:22 76:32 78:-9 79:12 80:-9 85:-16 88:16
#n #p	38:10 40:25 45:13 78:-9 79:15
"	18:19 40:23 45:17 48:-16 78:-9 79:29 87:17 91:9
#p "	38:10 40:25 45:13 78:-9 79:15
#n _ "	38:10 40:25 45:13 78:-9 79:15
, #c	0:-8 5:9 16:-20 20:9 43:43 49:18 54:24 65:21 66:20 84:19
#c mm	3:-16 38:11 45:26 48:23 49:-15 50:38 54:-10 65:20 66:-12 67:55 68:34 84:24 86:41 87:-11 91:-8
, goe	1:17 38:17
end _ @wire	38:21 78:20
#c _ ,	5:8 38:16 45:19 49:-12 54:8 66:21 68:24 115:10
, _ in	4:-8 8:-8 9:25 18:-10 38:9 46:17 52:22 90:35 115:20 116:-9 117:17
left over	20:25 38:8
end ,	37:19 38:14 40:9 61:15 121:9
mm _ stick	38:18 48:10
stick _ ,	37:19 38:8 49:21 116:-9
@wire _ put	38:12 49:17
@wire :	8:17 33:14 48:-17 49:18 50:11 65:14 67:14 68:23 79:-12 87:34
, into	38:24 41:8
tin pleas	38:8
old _ fret	71:10 78:8
the _ pleas	38:8
#n across	38:10
, radius	45:13
radius #c	38:16 84:10
, _ across	38:20 40:12
, _ #c	3:-10 38:9 45:48 49:13 57:30 58:-8 59:-16 79:-8 84:23
drop a	38:18
drop _ #d	38:18
another #n	0:-9 38:46 78:-8 92:11
another _ ,	0:-9 38:46 78:-8 92:11
a nip	38:8
, tang	39:11
i've a	1:13 38:9
a spar	38:8 64:10
tin with	38:8 41:11
@wire _ ,	0:-11 1:10 5:-11 7:32 8:36 19:10 20:24 21:-10 32:8 38:12 49:19 78:34
here _ #d	1:-9 38:17
add the	97:12 119:17
do _ add	34:15
, all	4:38 5:16 9:23 12:-13 13:-12 19:24 20:18 26:-10 29:52 31:13 43:9 44:20 69:9 104:30 111:-9
, _ of	9:11 16:-11 22:9 43:25 44:-10 48:9 71:9 88:9 91:13 97:52 106:13 119:8
just==	1:-8 2:-9 4:-12 13:-8 16:-9 17:31 27:8 33:-11 34:-8 35:9 42:30 43:25 49:25 65:13 67:18 73:-8 96:20 97:8 106:13 110:10 120:11 122:71 123:-13
just	1:-8 2:-9 4:-12 13:-8 16:-9 17:31 27:8 33:-11 34:-8 35:9 42:30 43:25 49:25 65:13 67:18 73:-8 96:20 97:8 106:13 110:10 120:11 122:71 123:-13
^ just	17:31 43:33 67:11
just press	43:22
just _ #n	3:11 67:10 96:18 97:10
pound==s	16:-9 43:22 54:24 84:23
, short	43:11 74:10 108:-9
bar ,	16:10 43:40 85:16
through _ of	52:10 74:-9 89:8 94:8
, _ bar	43:8
short _ ,	43:11
bar _ #c	43:13 84:13
gaug==e	43:23 54:50 101:10 123:36
done ,	9:15 42:20 43:43 46:11 71:-8 74:10
gaug	43:23 54:50 101:10 123:36
the gaug	43:26 54:12 101:10 123:37
, _ on	0:-10 1:20 15:10 23:12 33:-9 43:31 44:-12 74:-20 88:19 96:27 123:43
kn==	43:16
press with	16:-11 43:45 74:-9 85:13
kn	43:16
was press	24:15 43:14
was _ #n	13:42 15:28 16:-9 33:-14 123:-14
last right	33:-8 43:20 123:33
squeez==ed	43:26 109:12
squeez	16:12 30:8 43:37 109:12
down again	43:24 117:8
the long	9:-10 43:9 69:10 81:-10 84:14 85:12 93:10 123:32
long bar	43:24 84:11 85:20 123:32
long _ ,	5:9 43:22 85:12
#n done	13:-9 15:23 39:16 42:16 43:16 70:25 113:23 123:-12
#t ,	43:9 51:-8 53:22 104:9 108:10 110:-9
job _ done	13:-9 15:23 42:17 43:17 113:23 123:-12
at _ ,	1:8 2:21 3:36 10:11 45:-20 52:-11 76:-9 79:-11 84:9 90:21 92:16 111:16 120:12 123:-9
to _ ,	1:-9 2:-11 5:18 10:13 15:9 16:-17 19:15 28:-13 29:33 34:15 38:23 43:12 44:-10 63:12 64:-8 70:9 74:26 79:11 80:8 81:-12 88:37 91:10 96:-9 123:-10
, _ lb	16:-16 43:11 45:-11 54:27
have not	65:-9 93:-13 109:-9 123:82
not press	85:15
job _ yet	15:19
mark==	3:-11 4:10 16:19 42:13 82:12
and when	9:8 33:34
#n _ when	11:21 29:12 30:14 33:18
trebl ,	16:8 88:12
on _ ,	0:-15 1:-8 9:20 16:-10 17:-15 18:10 24:29 31:-12 33:-9 35:12 41:17 46:16 49:12 51:-9 52:16 60:8 88:14 92:31 96:23 105:15 108:-13 110:16 114:9 123:23
^ rock	57:11 88:23
stick==ing	17:17 42:-8 44:-9 88:58 90:-10 123:-12
stick up	17:17 42:-8 44:-9 88:58 90:-10 123:-12
look sunk	88:51
#n _ sunk	88:51
look _ ,	88:13 106:15
look high	17:-8 88:31
, rock	74:-16 88:31
rock ,	88:11 123:25
, nut	3:-10 45:33 84:-9
held ,	23:50
, gap	3:9
fine $	3:16 44:32 74:-14 79:-10 88:46 123:25
the same	4:-10 6:57 13:73 16:-11 17:11 20:-14 22:11 28:-11 42:-13 58:10 59:-8 73:80 88:20 108:11 112:-23 123:-8
of _ same	22:10 88:25
no rock	88:49
at all	0:14 9:-8 10:10 13:19 14:16 17:19 20:8 24:-25 25:-11 26:14 28:17 29:-8 36:-9 42:-10 44:-11 46:14 88:22 109:10 110:-8 111:11 112:13 123:29
around #n	88:20
no _ at	52:11 88:29
around _ on	29:-11 33:29 88:20
quick==	8:10 32:29 44:-9 88:14 120:17
^ had	44:12 71:36 77:10 94:-11 107:33
had a	44:-8 68:9 88:9
quick	8:10 32:29 44:-9 88:14 120:17
a quick	44:-8 88:14
quick look	8:10 44:-9 88:15
, #r	2:21 4:52 20:40 44:-9 51:-10 53:27 70:24 108:9
a _ look	44:-8 88:14
job _ sit	88:30 91:19
look _ to	88:30
last #n	4:20 88:24 92:19 97:14 122:40 123:-8
last _ on	44:-8 88:24 92:27 123:-8
hang==	6:12 40:-17 66:8 123:53
. .	88:-8 123:9
hang	6:12 40:-17 66:8 86:12 123:53
hang on	40:-17 123:54
on ,	29:10 56:21 60:10 95:19
, not	35:22 38:-10 44:-10 49:13 78:32 89:8 102:8 110:14 114:12 115:-9 123:-10
not _ .	113:14
. _ .	35:15 41:11 84:19 119:15
it #n	17:14 98:12 103:13
it _ that	8:38 17:12 30:10
, _ still	44:13
came back	44:36
back up	24:31 44:38
came _ up	44:36
none==	44:8 92:14 118:10
had my	44:30 94:-9
my #o	44:30 94:-9
#o look	44:71 88:13 94:-10 114:20
had _ #o	44:30 94:-9
my _ look	44:30 94:-9
, _ sprang	44:13
percent==	44:17
percent	44:17
#n percent	44:17
, fine	3:17 44:11 79:-10
at _ percent	44:13
#n _ humidity	44:21
%==	44:32
sprang ,	44:22
%	44:32
#n %	44:32
: #n	17:-14 49:42 51:22 53:-10 67:11 70:21 71:10 74:11 79:12 81:-18 87:9 92:27 94:10 96:-10 98:13 108:-10 114:19 115:15 117:15
job _ :	3:-12 13:9 16:23 18:20 42:-13 44:30 45:9 71:10 72:35 74:9 82:9 92:12 95:23 106:40 108:-9 112:-8 113:-10 114:-8 123:-8
: _ to	44:14 74:9 88:-16 108:-10
, noth	44:28 86:9 92:16 96:11
hour _ ,	119:18
morn==ing	11:38 26:25 28:-9 29:28 33:-10 40:10 42:8 49:11 52:25 70:9 73:8 94:10 100:14 104:33 109:20 114:15 116:14 123:-13
morn ,	44:15 49:12 52:9 86:8 109:24 114:13
all good	19:20 44:15
this _ ,	14:13 20:12 29:11 44:14 49:13 53:8 86:8 108:-11 109:15 110:19
, _ good	18:32 44:15
lift==ed	1:-11 37:11 42:-8 44:89 52:-12 83:29 111:48
overnight==	44:34
lift	1:-12 17:-9 37:10 42:-10 44:86 52:-12 83:28 94:19 111:47 113:30
#n lift	1:-11 44:94
overnight	44:34
springback==	24:32 44:48 92:-33
springback	24:32 44:48 92:-33
#n recheck	114:21
recheck :	114:21
, rest	116:22
#n _ :	70:24 73:11 94:12 96:-8 114:21
: _ and	8:21 70:25 74:9 81:-13
, _ are	25:13 27:18 28:-9 32:10 47:22 69:11 71:10
: _ stick	49:27 115:18
#n metre	49:10 50:69 115:-8 117:-8 120:20
each ,	49:17
, are	49:13 95:8
, _ metre	49:18
lindwurm==	9:-30 10:-10 11:-8 27:-26 29:-9 31:-15 32:104 49:44 65:-13 105:-11 109:-12 115:51 116:58 117:43 118:92 119:-33 120:119 121:34 123:-14
lindwurm	9:-30 10:-10 11:-8 27:-26 29:-9 31:-15 32:104 49:44 65:-13 105:-11 109:-12 115:51 116:58 117:43 118:92 119:-33 120:119 121:34 123:-14
from lindwurm	32:-8 49:25 117:10 118:22 123:8
lindwurm supply	9:-15 32:19 49:27 120:33 121:19
@wire _ lindwurm	49:21 115:24 123:9
from _ supply	49:25
euro==s	49:13 54:33 68:9 122:34
euro	49:13 54:33 68:9 122:34
#n euro	49:13
euro $	49:13 68:10
paid==	8:-10 19:74 33:-9 49:29
)~"
R"~(eur==	49:32 54:51
in ,	20:8 27:12 49:15 78:16 94:15 97:10 116:8 122:9
paid	8:-10 19:74 33:-9 49:29
, paid	8:-9 19:58 49:29
paid #d	49:31
eur	49:32 54:51
, _ #d	0:-8 1:-14 37:11 41:47 48:28 49:62 71:-11 79:9 115:-12
eur $	49:32 54:51
well==	31:45 35:11 41:38 42:47 47:8 49:26 94:36 98:8 111:-8 112:-9 123:16
@wire as	31:9 49:33
well	31:45 35:11 41:38 42:47 47:8 49:26 94:36 98:8 111:-8 112:-9 123:16
as well	31:45 41:38 42:47 49:26 61:9 94:37 111:-8 112:-9 123:16
@wire _ well	31:9 49:33
well $	31:46 42:52 49:32 61:9 123:18
wire _ :	8:8 49:20
here _ #n	1:10 49:19 62:9
#n "	79:15 84:8
, _ "	84:8
ferro==	8:-9 10:-8 11:-8 19:25 22:-12 27:-22 29:-20 31:-10 32:108 33:-15 49:33 65:-9 99:-15 115:27 117:-9 118:8 119:-20 120:99 121:104 123:10
daughter==s	49:15 115:10 120:32 121:17
m==	1:-8 8:-14 38:-14 49:15 50:74 65:40 66:9 67:12 68:80 87:-8 119:21 123:-12
apiec==e	49:27
ferro	8:-9 10:-8 11:-8 19:25 22:-12 27:-22 29:-20 31:-10 32:108 33:-15 49:33 65:-9 99:-15 115:27 117:-9 118:8 119:-20 120:99 121:104 123:10
^ ferro	27:-15 32:22 49:21 120:56 121:38
ferro and	49:15 115:10 121:19
daughter	49:15 115:10 120:32 121:17
and daughter	49:15 115:10 121:19
m	1:-8 8:-14 38:-14 49:15 50:74 65:40 66:9 67:12 68:80 87:-8 119:21 123:-12
#d m	8:-11 38:-12 49:14 50:11 65:53 68:50
apiec	49:27
m apiec	49:24
ferro _ daughter	49:15 115:10 121:19
and _ sent	49:24
daughter _ #n	49:20
, _ m	49:18 67:10
apiec $	49:26
into stock	49:37
, _ into	49:18
#n m	50:63 65:-13 67:16 68:30 119:21 123:-8
m ,	115:9
m _ #n	67:14
not _ yet	31:10 109:-8 123:29
fewer==	2:20 65:11
#n so	17:11 33:11
so i	35:12 39:9 63:18 71:-8 96:12 106:9 107:10 109:12 110:10 111:-10
i make	34:10
fewer	2:20 65:11
job _ so	17:11
i _ fewer	65:11
shift them	2:11
fret _ ,	3:8 16:-9 17:28 27:10 30:23 40:9 43:21 45:15 69:36 70:8 74:-16 75:10 76:-10 81:-36
measur _ ,	2:17 71:10 78:8
i _ them	2:22 30:8 73:21 123:-10
move them	2:31 123:-10
them up	2:14 14:10
fill==ed	2:8 35:20 81:20
shift plan	2:26
, empty	2:8 49:-9 66:10
empty slot	2:8 13:46
fill	2:8 13:10 35:20 81:20
hair==	29:11 44:10 49:17 60:11 68:14 69:-8 72:10 81:21 94:-15 115:-8 119:10
mak==ing	0:57 2:17 22:-16 38:-13 59:42 103:10
hair	29:11 44:10 49:17 60:11 68:14 69:-8 72:10 81:21 94:-15 115:-8 119:10
a hair	68:14 72:10 81:13
short ,	2:28 38:13 41:26 45:-8
- lay	2:58
lay them	2:10 41:-8
mak	0:57 2:17 22:-16 38:-13 59:42 103:10
mak new	2:17
new one	2:28 123:-10
hair _ ,	29:12
i _ -	120:12
re _ lay	2:58
without _ new	5:16
mak _ one	2:17
, ok	30:28
, _ for	29:15 67:9 68:18 84:14
, will	0:-8 3:17 47:15 72:9 107:27 113:19 123:-8
will that	0:-8 3:11 47:17
#n _ will	0:-9 3:19 13:13 123:20
, _ that	0:-17 3:24 16:18 38:9 40:-9 41:9 42:11 47:15 54:17 58:19 61:27 68:18 76:14 92:-9 96:10 121:14 122:20 123:-15
^ dress	3:10 25:-10 54:30 102:43
, good	3:10
, _ enough	3:10 67:9
#n side	3:19 36:25 82:22 88:-9
side only	3:18
leav it	3:9 107:12
, _ show	3:9 66:11
position==s	0:-10 2:24 4:49
position	2:23 3:15 4:49 16:8 40:-8
slot position	4:40
position _ job	4:29
tabl ,	0:-9 4:27 16:9 17:25 97:21
tabl _ #n	0:-8 4:30
@job _ how	4:13 13:22 16:16
least==	0:-10 1:33 2:9 5:47 41:17 54:21 119:13 120:12
@wire so	5:8 24:14
least	0:-10 1:33 2:9 5:47 41:17 54:21 119:13 120:12
the _ so	2:8 14:17 18:9 24:13 29:8 123:-10
- _ from	5:17 6:-8 64:8 69:14 70:-8
for _ lot	5:17 7:10
tin get	38:12
, no	43:-12 88:19 89:8 92:8 97:13 120:12
no new	5:14 123:25
would _ tin	5:16 22:-9
get _ with	2:9 30:-8 107:12
with _ ,	1:-9 10:21 28:10 39:14 61:8 82:10 85:8 92:9
no _ wire	5:15
we did	5:10 74:8 94:19
it today	5:10 100:10
would _ cut	5:11 27:16
if _ did	5:10
list ,	6:18 10:14 34:34 119:10
cut _ ,	1:9 6:19 34:34 70:8
saw==	73:19 102:20 123:19
saw	2:-15 18:-9 35:-9 69:35 70:10 73:56 81:-10 102:20 123:18
the saw	73:25 123:20
saw ,	4:10
, cut	0:11 5:25 20:18 59:12 106:19 107:-10
@wire cut	6:19
to hang	6:12
@wire _ list	6:19
cut _ to	6:12 70:15
label in	7:28
mm step	7:14
label _ #n	7:15
#n _ step	7:14 66:11
step $	7:16 27:15 30:-8 66:11
bin ,	7:9 39:20
all _ ,	2:10 4:8 14:18 19:14 23:-12 33:22 59:11 68:26
sticker==s	7:34
sticker	7:34
sticker for	7:34
drawer of	7:17
, by	7:14 19:18 30:35 65:17
sticker _ the	7:34
got open	8:-16 12:46
her==	12:34 29:-10 46:22 47:34 56:11 57:32 58:18 60:11 61:14 62:8 64:12 105:11 108:-15 109:9 112:12 123:-11
her	12:33 29:-10 46:21 47:25 56:10 57:32 58:17 60:11 61:14 62:8 64:11 105:8 108:-15 109:8 112:10 123:24
on her	12:29 29:-14 46:16 47:14
got _ her	12:40 29:-14
plat $	12:30 29:-13 123:8
window==	12:34 17:8 41:-9 60:27 63:32 78:11 79:12
window	12:34 17:8 41:-9 60:27 63:32 78:11 79:12
the window	12:22 17:9 41:-8 57:10 60:13 78:11 79:12
window bench	12:26 57:10 60:28 63:33 102:-10
at _ window	57:10 63:11
door==	12:27 52:9 57:39 60:37 63:44 102:-15 119:9
door	12:27 52:9 57:39 60:37 63:44 102:-15 119:9
the door	12:28 52:10 57:24 60:28 63:47 102:-12
door bench	12:27 57:40 60:38 63:44 102:-15
neck==s	12:64 97:24
neck are	12:64
neck _ in	12:21 86:21
are wait	11:-10 12:42 117:15
left the	14:13 61:39
so far	14:16 17:11 21:22 33:8
who _ left	14:32 62:11
left _ shop	14:13 61:28
far $	5:19 13:22 14:16 16:-13 21:22 76:22
^ peopl	14:96
doing _ #n	15:15
build==ing	15:10
could _ put	0:10 18:18
#d "	18:19 48:-15 87:17 91:11
" wide	18:10 48:-10 87:9
" deep	18:10
deep on	18:33 73:-11
" _ and	18:10
and _ "	18:10 79:15
deep _ the	18:33 73:14
seat==	106:23 123:14
curv==ed	73:29
doe its	18:17
its wire	18:17 72:19
wire fit	18:17
it too	18:15 76:23
its _ fit	18:17
is _ too	18:15 86:25 93:11 123:10
we had	19:19 61:10 111:12
have _ had	19:19
had $	19:10
record==	0:-17 4:16 17:9 19:30 35:10 42:-12 51:-8 57:13 61:15 67:9 72:13 77:8 92:9 95:12 106:15 108:10 115:8
all delivery	19:41
record	4:15 17:9 19:30 35:10 42:-12 51:-8 57:13 61:15 67:9 72:13 77:8 92:9 95:12 106:15 108:10 115:8
on record	0:-11 4:18 17:15 19:30
when did	19:46 31:-33 33:14
height==s	19:16
wire delivery	9:-10 19:63
october==	20:55 33:8
wire balanc	20:61
for october	20:9
balanc _ october	20:9
this month	8:-14 20:44 33:16
came _ and	20:19 21:-13
add up	20:41
up this	20:13
the _ add	20:27
becam==e	20:14 33:12 81:12
november==	8:-11 11:15 20:83 21:46 33:14 44:-11 114:21
becam	20:14 33:12 81:12
between the	11:15 20:11 46:-10 89:11
of november	20:17 21:27 33:22
the _ between	20:14 89:16
between _ #o	11:15 20:11 46:-10
#o _ november	20:17 21:27 33:22
saving from	20:-11 21:24
tin this	21:11
saving _ the	21:11
september==	20:40 21:26
sav _ september	21:11
^ money	21:27
#n november	11:18 20:17 21:9 44:-10 114:22
the _ brought	21:10 49:27 65:-13
us _ #n	21:10
bother==	21:12 50:20 80:13 94:11 123:21
bother	21:12 50:20 80:13 94:11 123:21
bother -	21:13
did _ save	21:18
dead==	8:-22 22:57 56:16 93:8
dead	8:-22 22:57 56:16 93:8
dead _ in	8:-22 22:57
wood _ the	22:26 86:12 89:11
touch _ a	22:26
use to	1:-8 38:12
no _ to	1:-8 36:-15 38:10 51:-8 85:12 123:81
anybody $	23:23 64:13
idle for	22:27
idle _ #n	22:27
not scrap	22:22
do _ scrap	22:19 123:23
@wire too	22:12
short to	22:19 80:13
be any	1:9 22:13
short _ be	22:21
be _ good	22:13
spoken==	8:-10 23:67
spoken	8:-10 23:67
spoken for	8:-10 23:67
for anybody	23:23 64:13
piec _ for	0:9 23:22 35:-8 36:11 123:24
#n _ anybody	23:18 64:13
what _ up	24:35
up _ job	24:34 90:9
@wire _ by	24:31 38:-11 68:30 79:10
spring==ing	24:15
back ,	23:12 24:32 34:12 93:10
, per	24:13
spring _ ,	24:32
back _ per	24:13
at what	19:10 24:22 26:8
@wire _ down	24:22
sprang _ the	24:29 44:9
sander==s	8:-17 9:-12 25:49 97:-8 98:53 100:12 101:28 123:29
sander have	25:11 100:17
book what	26:24
press booking	26:33
is got	15:8 26:30
who _ got	15:8 26:30
a book	26:55
booking _ the	26:30
the step	27:37
are _ step	27:16
on _ new	27:12
long for	27:12
just #n	27:12 110:11
how _ for	27:12
long _ just	27:12 49:24
and on	15:11 23:12 27:26
and _ a	17:8 27:26 52:10
board ,	4:10 27:26 30:34 56:16 57:-8 89:31 96:8 106:11
new _ ,	2:-14 5:33 10:-8 13:-8 27:25 30:33 34:9 45:40 46:29 52:15 77:14 101:14
fret _ how	27:8
^ till	28:52 29:-16
till when	9:24 28:40 29:-23 31:19
christma==s	28:30 52:12
christma	28:30 52:12
on christma	28:30 52:17 111:-9
christma day	28:30 52:17 111:-9
)~"
R"~(are _ shut	28:33 52:-20 111:8
shut _ christma	28:30 52:17 111:-9
on _ day	28:44 52:12
do #n	30:10 51:13 74:-10
december==	0:-10 11:17 13:-9 16:-18 26:8 28:69 30:84 33:-18 42:-11 44:-9 46:62 49:-8 51:-15 52:39 53:22 74:-11 88:-12 89:-8 94:-8 100:19 108:-11 109:73 110:26 111:73 117:41
#n december	28:57 29:14 30:23 51:-12 52:47 74:-9 88:-8 100:15 104:10 108:-8 109:45 110:16 111:57 116:-13 117:41
december ,	26:14 29:23 30:18 46:-16 52:48 53:10 100:9 104:9
customer _ a	30:10
by _ december	30:41
- _ day	111:14
only ,	3:9 17:34
@day ,	11:17 26:-9 28:-8 33:21 44:-10 51:34 52:13 104:10 105:31 107:-9 108:10 109:11 110:16 114:10 117:9 123:19
, can	2:8 3:11 17:8 122:12 123:-11
, _ next	16:12
and by	11:-8 29:14 30:48 33:13 46:-10
report==	11:37 13:15 16:-14 20:-11 21:20 34:28 60:11 101:12 122:34 123:-8
@person report	33:59
did piec	1:-12 33:32
wher _ piec	33:32
piec _ come	1:-12 33:32
i _ today	29:-10 33:42
i say	34:29
can _ say	34:28
say $	1:-13 8:11 34:40 68:33 103:-8 115:8 123:30
i report	16:-13 33:13 34:29
keep piec	35:-11 36:40
by for	11:-11 23:37 36:48 72:-9 83:12
by _ the	11:-9 23:24 30:25 36:14 46:-10
nobody _ piec	36:17 123:20
^ save	35:-12 36:37
not _ piec	23:11 36:-9 37:-8 123:35
more ,	16:8 41:13 47:8 55:8 56:23 59:12 83:13 99:-8 103:-8 108:9 111:20 112:9 123:26
, free	83:14
free piec	123:18
any _ ,	41:12 46:8 47:8 50:10 56:16 59:12 64:-9 80:11 83:13 108:10 111:20 112:9 120:8 121:-8
more _ free	83:14
releas the	37:49 72:-11 83:48
releas _ #n	37:34 63:-15 64:45
chang==ed	37:22 47:22 100:11
mind ,	37:22 47:22
, let	16:8 31:9 37:21 51:20 64:11 83:11 110:-10
let it	37:26 123:12
chang _ mind	37:22 47:22
everyon==e	37:31 48:10 87:-10
back to	37:39 62:12 82:-9 83:13 112:10 117:12
everyon	37:31 48:10 87:-10
give _ back	37:41
not let	37:-16 83:-17 123:45
, _ not	1:-18 37:-20 42:-8 52:10 68:22 100:25 107:13 123:22
do _ let	37:-16 83:-17 123:45
bin piec	39:38
, too	22:8 39:30 45:-8 80:12
, _ short	22:8 39:30 45:-8 80:12
, kink	39:35 76:32
piec _ yesterday	39:12
piec _ yet	123:30
mic'd==	40:32
mic'd	40:32
^ mic'd	40:32
caliper==	2:10 40:38 41:-9 75:11
caliper	2:9 40:96 41:-12 68:12 75:10 91:-10
the caliper	2:10 40:86 41:-10 75:10
" _ by	40:26 48:-9 87:10
by _ caliper	40:26
caliper $	40:62
, bent	38:10 40:8
, an	40:8 69:13
#n _ an	40:8 53:8 69:21 119:10
, _ hour	40:8 42:19 69:11 104:11
, measur	3:11 38:10 74:24 75:12 86:8
tenth==s	41:16
tenth	41:16
in drawer	1:-9 38:18 41:24 45:-8 71:16 74:-10 77:10 79:-8 81:11 95:-8
it _ in	1:-10 18:9 29:8 38:11 41:19 45:-8 90:-8 95:10 119:13
is _ drawer	1:-9 38:12 41:9
too _ ,	2:10 40:-11 41:51 45:-8 90:9 91:13 123:-11
up short	41:10
short :	41:18
" ,	38:-8 45:13
, end	1:11 3:22 41:8
#p _ ,	45:9 76:33
, _ dress	3:8
millimetr==e	0:-12 7:10 18:8 41:30 54:30 73:14 91:21
millimetr	0:-12 7:10 18:8 41:30 54:30 73:14 91:21
a millimetr	0:-11 18:9 41:30 54:30 91:21
millimetr _ on	41:19 73:8
clean==ed	4:-29 13:-9 42:83 76:16
polish==ing	27:53 42:20 97:9 98:-9 102:20 103:-9 107:25
it can	42:23 100:12 112:19
can go	37:20 39:-8 42:22 56:11 80:25 85:22 86:8
it _ go	20:8 42:23
end _ on	42:46
between #n	42:33 53:12 69:-8 71:-15 81:-8 88:22 100:9 110:14
not tru	64:21 123:10
edda==	45:46
edda	45:46
#c ,	45:12 58:27 84:26
nut #n	3:-10 45:25
for _ :	20:18 50:9
: _ #c	84:10
scal _ ,	45:13
fret _ nut	3:-10 45:25
, _ at	3:12 19:10 40:-10 42:33 57:22 60:-8 75:8 84:9 88:16 106:-8
, scal	45:25 66:11 84:-9
, wire	45:15 71:14 115:9
" _ #n	45:9 79:15
, _ @wire	9:21 18:8 31:-11 45:18 48:-10 71:12 117:23
january==	46:16 52:15 109:20
, due	115:13
due #n	54:9 115:13
#n january	52:15 109:20
january #c	110:13
nut _ mm	3:-10 45:10
, fan	3:-10 45:10
fan #c	3:-10 45:10
#c to	3:-10 45:10 86:9
mm squar	3:-10 45:10
squar at	3:-10 45:10
job _ -	3:-10 42:19 45:10
#c _ squar	3:-10 45:10
squar _ slot	3:-10 45:10
greta==	120:11
greta	120:11
, only	1:-10 11:12 38:11 96:12
do ,	54:10 60:12
, take	47:14 56:14 60:11 64:-8 85:25 99:34 121:24
wire _ ,	9:26 20:24 31:10 45:8 48:34 49:13 84:-9 119:-11
job ,	2:9 12:19 13:-11 15:8 45:45 47:21 93:-8 103:10
, _ @job	13:-8 45:46 47:9
now promis	11:-9 46:14 117:13
now _ for	11:-9 46:14 117:13
for _ december	29:25 46:14 111:17
to go	27:32 46:20
go out	46:20
has _ go	27:20 46:20
now #d	46:15
#d .	38:16 46:15 52:32 55:20
. #c	46:15 52:32
@job _ date	11:-9 46:29
^ leav	63:18 113:21 114:16 123:29
as it	123:30
as _ is	123:30
earlier==	29:-11 30:43 110:18 123:-21
earlier	29:-11 30:43 110:18 123:-21
chang her	47:23 60:11
@job _ her	47:22 112:13
her _ ,	12:9 47:37
, _ job	1:9 5:16 6:12 12:-9 16:-8 36:67 47:23 77:-8 94:43
crack==ed	39:13 47:17 85:8
queu ,	47:20
, neck	93:15
crack	39:13 47:17 85:8
from _ queu	47:42
crack $	39:13
pick==ed	47:17 64:-13 71:-8 82:10 90:8 95:12 106:37
his==	0:-10 18:8 23:11 26:9 29:-10 30:10 47:23 57:9 64:-9 106:14 108:9 123:30
pick	0:12 47:16 71:-8 82:10 90:8 95:12 106:37
his	0:-10 18:8 23:11 26:9 29:-10 30:10 47:23 57:9 64:-9 106:14 108:9 123:30
his @job	13:-9 23:12 26:11 29:-8 47:15 123:33
again ,	8:8 23:9 38:-9 44:40 47:16 62:52 84:9 85:11 94:14 101:14 102:9 103:10 114:-8
, cancel	47:17 122:10
@job _ his	47:17
pick _ @job	47:17 82:10
@job _ again	44:9 47:17 77:11
up _ ,	47:17
cancel==s	123:47
if @job	123:47
@job cancel	123:47
, tell	14:16 25:12 123:10
if _ cancel	123:47
, _ me	0:-8 13:8 14:15 25:12 28:10 31:9 122:8 123:8
jumbo==	24:13
jumbo	24:13
wire jumbo	24:13
, crown	19:16 38:-10 48:32 49:13 87:-21 116:17
wide ,	18:9 84:32
high ,	44:10
, stick	38:-10 48:40 49:11
stainless==	8:26 48:16
steel==	16:-8 17:13 48:16
stainless	8:26 48:16
steel	16:-8 17:13 48:16
steel ,	48:16
call _ ,	48:12 72:19 74:-8 119:10
steel _ crown	48:9
, _ width	45:27 48:23 84:-17 87:-8
gold==	48:18
ft==	48:18 50:8 68:20
gold	48:18
ft	48:18 50:8 68:20
#n ft	48:18 50:8 68:20
ft $	48:18 50:9
vintag==e	48:9
new kind	48:8
wire ,	0:-11 5:39 7:16 8:10 9:-16 19:11 20:-12 23:24 28:-11 29:-10 31:29 38:58 74:-10 77:20 119:9
vintag	48:9
wire _ vintag	48:9
" $	79:15
@wire _ it	1:-9 24:14 36:10 50:14 118:13
under _ metre	50:9
metre $	50:29 120:20 121:38
m $	50:66 119:9
warn==	50:9 109:9
warn	50:9 109:9
@wire drop	50:17
drop under	50:25
metre down	50:21
from _ metre	50:21
@wire reorder	50:20
level #n	96:12
@wire _ level	50:20
reorder _ #n	50:17 98:15
to soon	16:-8 51:14 104:10 108:9
#n _ soon	16:-8 51:14 104:10 108:9
more @day	51:39 52:-12
, clos	51:29 52:14
no _ @day	51:39 52:-12
more _ ,	51:39 52:-12
@day _ clos	51:47 52:22 111:-14
shut _ #n	51:9 52:-14 111:21
at _ :	51:9 73:-10 75:28
weekly==	51:47
weekly	51:47
weekly hour	51:20
hour @day	51:22 108:-8
every week	29:-9 51:22 108:33
stocktak==ing	52:26 65:13
stocktak $	52:26
shut $	52:40 111:10
clos==ing	52:-19 111:33 123:78
extra _ @day	53:8
to _ as	5:17 53:8
on _ december	28:9 29:-8 52:14 53:10 104:18 110:36 123:25
pm==	53:9
this @day	51:-29 53:58 108:-23 110:36 123:28
pm	53:9
#n pm	53:9
this _ #n	51:-23 53:40
shift on	53:9 71:-8 74:25
#r ,	2:18 4:46 70:23 74:19 96:15 104:19
, #t	44:-9 51:-23 53:35 100:-8 108:21 114:21
#t -	51:35 53:21 104:15 108:13 110:13
- #t	51:35 53:21 104:15 108:13 110:13
#t _ #t	26:-8 28:-11 51:40 53:34 74:-10 104:32 108:24 110:32
@day too	51:-11 53:28
too ,	31:17 51:-11 53:29 60:12 97:15
to #t	51:29 53:22 74:-10 104:16 108:-15 110:21
we _ be	53:10 111:12
on _ too	51:-11 53:28
@day _ ,	26:10 28:-10 46:16 51:-17 53:70 100:-9 104:12 108:-8 109:35 110:-9 114:14 115:8
trim==	0:12 29:-9 34:47 54:25 123:16
limit==	0:11 13:-15 16:49 17:-12 29:-9 34:47 50:17 54:24 98:15 123:15
trim	0:12 29:-9 34:47 54:25 123:16
the trim	0:12 29:-9 34:47 54:25 123:16
limit	0:11 13:-15 16:49 17:-12 29:-9 34:47 50:17 54:24 98:15 123:15
trim limit	0:12 29:-9 34:47 54:25 123:16
limit to	54:27
set _ trim	54:27
the _ limit	0:12 29:-9 34:47 54:25 123:16
trim _ to	54:27
limit _ #n	54:27
plat _ #c	16:-8 43:-14 54:46
length are	54:30 80:14
setback==	54:20
mm _ now	54:30
cost==s	10:12 54:10
loss==	54:63
, set	23:28 54:28
loss	54:63
to that	54:10 111:11
chang the	51:17 54:28 60:8 117:13 120:9 123:8
after _ ,	44:12 47:16 54:9 86:14 92:14 123:-8
make the	0:21 54:35 112:9
bin step	7:-10 54:52
/==	11:-10 54:30 55:98 56:-9
vienna==	54:24
)~"
R"~(/	11:-10 54:30 55:98 56:-9
euro /	54:35
vienna	54:24
/ vienna	54:24
zone _ euro	54:24
euro _ vienna	54:24
vienna $	54:24
than==	1:-9 8:-12 32:26 40:-9 54:20 60:9 68:41 75:-10 91:39 123:73
^ never	54:11 123:66
than	1:-9 8:-12 32:26 40:-9 54:20 60:9 68:41 75:-10 91:39 123:73
more than	54:13 60:11 68:17
set that	54:19
a _ ,	27:-9 32:9 38:8 39:18 54:11 61:10 64:16 94:16 99:25 102:8 111:16 112:10 117:8 122:9 123:-12
limit $	0:12 29:-8 34:50
http==	55:21
ring==	9:8 32:9
receiver tell	56:25
http	55:33
http :	55:33
: /	55:33
/ /	55:33
/ #d	38:10 55:20
. #t	55:20
#t /	55:20
http _ /	55:33
: _ /	38:11 55:33
/ _ #d	55:20
/ _ .	55:33
#d _ #t	55:20
. _ /	55:33
log==	33:124 38:12 55:10
log	33:123 38:12 55:10 58:16
/ _ ,	55:15
send==ing	56:39
wall==	56:36
stop send	56:39
wall	56:36
the wall	56:36
send _ the	4:21 26:18 56:24
delet==e	56:15 99:16 102:-9 121:34
clamp==	56:42 95:64
delet	56:15 99:16 102:-9 121:34
^ delet	56:14 121:11
delet the	56:14 121:11
receiver call	56:14
call clamp	56:26
delet _ receiver	56:14
the _ call	14:23 17:-8 36:10 56:30 58:18 72:17 74:-8 85:14 121:12
jelka==	57:19
jelka	57:19
he==	29:-11 32:16 46:30 57:33 58:26 61:11 62:16 63:16 97:-16 106:14 108:-13 110:15 119:11
start today	57:21
today ,	33:13 43:-8 57:24 104:11 123:36
he	29:-11 32:16 46:30 57:33 58:26 61:11 62:16 63:16 97:-16 106:14 108:-13 110:15 119:11
, he	46:19 57:25 58:12 61:11 62:17 63:17 97:-9 106:14 119:12
start _ ,	57:21
he _ the	57:11
at _ door	12:13 57:17 60:10 63:11
milka==	57:15
she==	3:19 33:9 41:-11 46:9 57:45 62:32 105:15 108:-11 109:9 110:17 123:10
milka	57:15
she	3:19 33:9 41:-11 46:9 57:45 62:32 105:15 108:-11 109:9 110:17 123:10
, she	57:36 109:10 123:24
may only	57:30 60:17
only look	57:30 60:17
, _ may	37:12 57:31
may _ look	57:30 60:17
janez==	57:44
join==s	57:44
janez	57:44
join	57:56 97:12 99:22
as a	16:8 17:11 57:39 61:-8 62:15 99:35 102:-9 114:11 119:13 121:9
colleagu==e	12:15 26:8 57:37 59:-11
pia==	57:27 59:-11
colleagu	12:15 26:8 57:37 59:-11
new colleagu	57:37 59:-11
pia	57:27 59:-11
, uid	57:31 59:-12
and #c	5:10 58:22
also _ in	53:9 58:11
off @person	58:-11 59:22 64:10
login==	59:38
not @person	59:35 64:13
login	59:38
@person login	59:20
any longer	37:23 59:22 64:20 80:11 99:30 113:9 123:-27
is _ @person	59:35 64:13
@person _ any	12:15 59:22
longer $	37:25 59:22 64:19 99:30 113:9 123:-13
mov==ing	60:15 63:-13
@person mov	60:18 63:-13
over to	16:10 60:18 88:-8
@person _ over	60:14 63:13
to _ window	17:10 60:18 63:-13
odila==	60:29
@person call	60:8 99:9 109:35
odila	60:29
sav==ing	4:-8 39:12 60:22 102:22 117:10
@person may	60:16 109:-8 123:24
@person back	62:68 108:8
with us	61:-8 62:44 117:10
back _ us	62:11
come _ to	62:14
bring==	21:11 62:28
bring	21:11 62:28
rejoin==ed	60:-8 61:-8 62:67
crew==	62:53
rejoin	60:-8 61:-8 62:67
crew	62:53
will do	63:38 113:-9 118:12 123:10
i _ do	29:13 63:49 113:-9
snow==ed	40:13 63:17
snow	40:13 63:17
, @person	12:19 15:-8 33:-12 63:13 98:10 110:33 123:29
, _ doe	5:14 13:26 16:-9 41:14 63:16
give==s	30:15 64:19 119:18
whoever==	64:41 90:10
whoever	64:41 90:10
, whoever	64:32
whoever has	64:31
@person _ up	64:30
@job _ whoever	64:21
, _ has	21:8 29:8 44:25 62:9 64:14 93:24 118:10
whoever _ time	64:32
take @person	62:29 64:11 105:8
@person off	28:-14 64:12 108:-12 109:15 123:42
let anyon	37:-13 64:58
do it	29:12 30:15 64:30 123:-11
up job	64:40
unassign==	13:-17 64:120 123:-10
unassign	13:-17 64:120 123:-10
not do	64:19
all ,	10:12 47:16 52:-10 86:16 111:15 116:9 123:-9
, nobody	52:23 59:9
count the	8:10 65:19
, _ stick	31:-8 65:33 72:10 116:18
- take	65:9 120:12
m of	50:9 65:17 67:10 68:12
- _ :	65:9
: _ m	65:44 67:13 68:-8
m _ @wire	65:19 67:10 68:12
@wire _ all	5:11 65:8 68:15
by my	65:20
altogether==	8:25 49:8 62:-8 65:10 66:11 99:11 105:12
i count	65:32
#d metre	65:29
altogether	8:25 49:8 62:-8 65:10 66:11 99:11 105:12
altogether $	8:27 49:11 65:10
it say	1:-11 8:11 49:11 66:-12 68:31 123:17
, _ how	4:21 8:21 9:-9 13:10 24:13 27:-16 32:8 34:12 122:-12
or _ many	8:12 22:10
gram==s	38:-8 42:11 49:-14 66:46 67:63 69:-8
coil ,	49:-15 66:31 123:8
gram ,	67:8
empty spool	49:14 66:-10
, _ gram	49:-13 66:30
, _ spool	49:-9 66:11
g==	20:-10 38:-8 49:27 50:-8 65:-18 66:66 67:89 116:-8 119:8
scal :	66:16
#d g	49:-20 67:71
: _ g	66:16
kg==	66:10 119:9 120:12
weigh #d	66:9 67:22
kg	66:10 119:9 120:12
#d kg	66:11
weigh _ kg	66:11
g ,	119:8 123:10
mm _ is	3:10
scal $	49:-12 67:29
oz==	49:-20 66:50
oz	49:-20 66:50
#n oz	49:-20 66:50
#n cm	66:-9 67:15
: #c	67:11 84:19
calibrat _ :	67:16
: _ mm	3:38 41:-14 67:11 87:10 91:11
, _ g	67:19
really==	1:-9 27:-18 32:43 39:-15 68:50 84:9
really	1:-9 27:-18 32:43 39:-15 68:50 84:9
really #d	1:-8 39:-15 68:50
bent ,	38:9
, correct	68:25
correct it	68:8 123:19
#n _ were	70:10
were _ ,	65:8 96:11
metr==e	16:17 29:-9 50:21 65:8 67:11 68:14 81:-8 88:16 119:10 123:-22
half a	18:9 41:10 54:30 60:11 65:8 68:14
metr	16:17 29:-9 50:21 65:8 67:11 68:14 81:-8 88:16 119:10 123:-22
a metr	50:21 65:8 68:14 123:-21
behind the	68:14 76:10
half _ metr	65:8 68:14
a _ to	52:10
metr _ @wire	68:14
@wire _ hand	65:20 68:21
, _ by	11:10 27:15 30:-8 45:9 78:11
by _ m	68:17
correct piec	68:23
was off	13:10 28:10
becaus the	47:27 118:13 123:-10
to _ metre	65:17
end _ cut	42:19
was _ off	28:-12 109:-17 123:44
remeasur==ed	68:20
hand should	68:24
should say	68:24
becaus i	68:20 109:12 123:-11
remeasur	68:20
on _ should	68:24
hand _ say	68:24
of piec	0:-11 1:20 33:-11 35:15 39:16 68:11 123:11
cut _ and	69:10 123:-8
came off	69:22 70:23
#n made	45:-10 69:18 77:12 81:-11
made #n	38:-8 69:18 77:19 81:-11
cut ,	4:12 5:36 6:10 12:-11 14:15 20:17 69:10 122:8
all from	69:9
are _ ,	31:9 69:10
, _ from	5:29 8:-9 10:9 19:-10 24:17 74:-9 81:23 86:8 100:10
a fresh	44:10 70:9 94:-9
old @wire	71:13
fret out	71:14
they'r==e	2:9 23:22 71:8 80:22 94:10 95:-9 100:9 115:8 117:40 119:14
sill==	41:-8 78:11 79:13
they'r	2:9 23:22 71:8 80:22 94:10 95:-9 100:9 115:8 117:40 119:14
, they'r	80:23 81:-10 94:11 96:10 115:8 119:14
sill	41:-8 78:11 79:13
window sill	41:-8 78:11
from _ ,	5:9 12:18 22:-9 40:11 120:12
@job _ they'r	96:10
they'r _ the	71:8
on _ window	41:-8 78:11
the _ sill	41:-8 78:11
sill $	41:-8 78:9
had _ pull	71:38
come _ lot	72:-14 123:30
is from	4:12 102:14 108:11
lot for	72:41 83:16
: _ wide	75:18
, _ deep	2:-10 18:19 73:22
- _ slot	2:14 18:8 73:9
saw==ed	2:-10 18:-8 69:41 70:13 73:37 81:-10
^ saw	69:32 73:10
saw the	73:18
saw _ @job	73:17 75:8
deep ,	18:26 73:16
same $	13:-14 22:10 73:82
mov #n	74:54 81:-13 96:-11
mov the	74:20
down to	50:13 54:19 74:19
did not	41:-8 71:10 89:-12 122:22 123:76
not move	123:8
anyth on	123:44
did _ move	123:18
across at	75:31
quarter==s	75:13
@job an	69:11 75:13 81:-11
#o ,	17:9 33:11 45:15 75:22 113:11
@job board	3:10 37:9 73:15 75:20 81:-12 86:32 90:26 106:9 107:18
bag==	76:22 82:13
the dust	76:22
bag	76:22 82:13
dust bag	76:22
the _ bag	76:22
spoilt ,	76:36 85:11
, fil	27:11 76:31 102:10
right through	47:11 76:32
old #n	38:-9 74:10 77:42
old _ out	27:10 77:12 120:13
old _ in	123:20
old _ #n	39:20
remak==e	123:13
remak	123:13
not measur	38:-12 71:10 78:33 123:11
, _ measur	38:-16 41:12 77:10 78:43 91:8 116:17
unmeasur==ed	22:-12 38:-14 78:65
^ about	22:-12 34:22 78:17
#n bit	22:-12 78:28 81:10
unmeasur	22:-12 38:-14 78:65
thrown _ the	22:-12 39:16 78:17
unmeasur $	22:-12 78:25
of _ pull	78:24
handful :	79:15
@wire handful	38:-20 79:21
the _ handful	38:-20 79:21
^ went	44:16 79:15
went through	65:11 78:-8 79:15
handful measure	79:15
^ length	4:22 74:-11 79:13
length _ the	4:21 40:11 74:-11 79:13
of _ window	12:11 79:13
: _ #n	13:-8 39:8 40:-14 41:12 45:-10 49:15 72:44 74:-8 79:12 81:13 84:9
^ both	80:16 81:21 100:17 101:13
both #d	80:16 81:33
#d _ can	2:10 79:-10 80:27
piece _ ,	80:20 81:11
, scrap	20:19
, _ them	22:21 78:11 99:15 101:14 121:16
s for	81:10
for _ and	61:9 81:11
#d _ went	69:16 81:-8
both _ s	81:34
not take	23:14 103:13 108:10
s _ job	123:21
set _ lot	72:-8 82:38 83:-8
lot _ for	72:8 82:37 83:-10
we set	23:27 82:-16
did _ set	23:31 82:-14
give free	83:12
that _ kept	37:12
reservation==s	23:40 26:61 29:-8 83:41 100:-17
)~"
R"~(forget about	83:13 85:10
reservation	23:40 25:-8 26:80 29:-8 35:-12 37:41 39:-8 83:41 100:-19 105:61 123:-8
, _ all	3:-11 16:18 20:10 29:11 83:12 86:14
the hold	23:39 37:35 42:-8 68:8 83:33
hold on	1:-8 36:10 37:21 83:38
all _ hold	23:40 42:-8 83:33
not _ go	83:-17 123:29
: length	45:-9 84:19
length #c	48:9 84:20
, width	45:-9 84:34
call _ :	84:10
length _ ,	84:10
, length	3:-8 4:53 71:-11 78:21 84:23
, rat	45:-9 84:17
bar _ ,	84:25 85:51
bar crack	85:9
crack ,	85:9
it out	3:10 99:11 123:-14
of use	85:22
it _ of	99:11
out _ use	85:22
drop _ short	85:15 123:12
bar any	85:15
with _ hollow	43:8 85:8
bar _ more	85:25
call short	85:17
bar _ short	85:17
cradl ,	86:12
, head	86:11
clear ,	86:11
, glue	86:11
, _ clear	86:11
head _ ,	86:11
noth _ ,	86:11
, _ set	48:8 57:9 86:10 87:-10
nut off	86:79 107:-9
board _ soft	86:31
beyond #c	86:27
beyond _ mm	86:27
^ hollow	86:9
from #c	86:16
: crown	48:-12 87:35
: _ #d	3:-11 16:18 48:-10 73:36 87:21
^ over	87:12 88:12
see==	3:10 4:12 16:12 19:9 26:22 31:8 34:25 89:23 123:-8
see	3:10 4:12 16:12 19:9 26:22 31:8 34:25 89:23 123:-8
can see	3:11 89:23
see light	89:12
can _ light	89:12
and under	89:49 95:8
bottom==ing	90:10
deepen==ing	90:19
deepen	90:19
want _ ,	80:10 90:19
by _ ,	11:14 20:14 21:-10 74:8 88:32 99:12 123:34
^ feeler	91:24
feeler say	91:24
stop==s	92:22
good ,	92:11 99:11
, last	9:26 21:12 92:11
the _ stop	92:22
^ back	93:17 106:68
neck on	93:31
- _ neck	93:16 97:25
whether==	3:10 18:19 89:-11 93:-13 123:30
not look	80:12 89:-12 93:-13 123:31
whether	3:10 18:19 89:-11 93:-13 123:30
look whether	89:-11 93:-13 123:31
not _ whether	89:-11 93:-13 123:31
reseat #n	94:66
reseat _ and	94:34
seat anew	94:26
glu #n	95:29
, at	1:8 10:11 16:9 20:10 29:8 35:12 41:42 71:-8 119:11
past #n	53:11 88:-8 92:33 106:13 110:15
clamp _ #n	95:9
at _ past	106:14 110:16
a clamp	95:32
clamp on	95:33
in _ with	95:19
a _ on	3:8 36:11 51:19 88:-10 95:19 104:10
glue #n	123:29
file==	3:8 4:10 16:17 96:10
levell #n	88:-8 96:65 123:12
spot==	56:13 96:20
spot	56:13 96:20
levell _ on	96:19 123:14
yesterday _ fret	77:26 96:11
we'v==e	2:8 35:15 61:19 66:10 97:32 98:42 99:36 119:9 123:-12
buffer==s	97:11
buffer==	97:18 99:13
we'v	2:8 35:15 61:19 66:10 97:32 98:42 99:36 119:9 123:-12
^ we'v	35:16 61:22 97:34 98:17 99:36
we'v got	66:11 97:36
buffer	97:30 99:13
now ,	2:-10 11:16 34:13 40:-9 42:20 43:8 49:9 59:8 60:19 77:10 83:12 97:24 107:24 108:28 120:15 121:10 123:-10
we'v _ #n	97:36
buffer _ ,	97:11 99:14
, _ machin	26:8 97:18
buffer $	97:19
bandsaw==	97:22
bandsaw	97:63 99:18
new _ :	0:12 45:10 57:14 97:21
bender==	97:26
bender	97:26
them ,	5:-9 70:8 71:25 77:-12 80:10 97:8 120:12
machin _ ,	97:24 98:11
, _ minute	38:9 98:11 103:17
the spar	99:17
spar both	99:17
both as	99:17
machin ,	99:26
, count	65:11 97:14 116:8 119:-9
spar _ as	99:17
both _ a	99:17
as _ machin	99:38 102:-8
dri press	97:27 98:-9 99:27
, call	68:14 84:9
dri ,	99:11
, new	45:-12 46:31 77:17
a _ press	98:22 123:9
press _ ,	26:11 54:26 123:38
machin open	97:16
open ,	12:28 28:60 53:-17 97:15 111:-10
, setup	98:13
count _ ,	49:11 116:9 119:-8
#n _ setup	98:30
we'v #n	98:46
bench==es	14:27 98:124 99:11 101:31
#n _ left	50:11 98:27
set _ the	98:19
sold==	47:17 99:68 119:10 121:-8
sold	47:17 99:68 119:10 121:-8
it off	23:13 56:15 85:18
off _ list	47:21 99:41 121:17
rid==	22:9 56:11 80:11 99:11
^ get	80:11 99:11
rid	22:9 56:11 80:11 99:11
get rid	22:9 56:11 80:11 99:11
rid of	22:9 56:11 80:11 99:11
, we	47:22 65:10 85:10 97:12 99:18 111:8 114:16 123:-9
not have	2:10 37:21 99:18 102:9 113:23 122:10 123:-22
that machin	99:26
machin now	58:14 97:-9 99:11
rid _ the	56:11 99:12
not _ that	99:12 103:14 123:8
@day soon	100:18 114:11
broken $	25:17 47:23 85:16 100:61
leak==s	25:-8 100:30
leak	25:-8 100:30
, press	25:-10 34:24 43:10 100:14
, _ out	22:23 25:-8 39:12 69:14 100:17
servic==ed	100:10
, out	20:9 100:23
@day #t	53:9 100:18 104:17 114:33
get _ ,	100:10
out _ @day	46:17 51:-8 100:22
belt==	41:17 98:18 100:13 102:-9
torn==	39:11
torn	39:11
on _ number	27:14
number _ ,	1:11 13:19 26:8 39:-8 46:16 74:-9 80:11 81:21 89:10 100:15
afternoon==	8:-8 11:15 26:14 29:23 33:-9 39:17 42:17 51:-11 52:27 53:20 75:-10 104:31 109:56
befor #n	51:8
afternoon ,	52:10 53:22 109:10
down until	123:29
until #t	53:12
fix==ed	8:36 9:-14 51:20 101:21 106:12 110:-10
fix	8:36 9:-14 51:20 101:20 106:12 110:-10 123:17
^ fix	101:21 106:14
fix the	101:20 123:18
fix _ press	101:20 123:18
it _ back	88:16 101:21
number _ sander	98:20 101:12
sander _ now	98:16
bend _ a	102:10 103:26
need _ bench	57:-8 99:10 102:28
fil==ing	25:-8 57:-8 102:50 107:23
the bench	1:20 25:13 38:-11 98:21 101:32 102:62 123:10
bench ,	6:27 12:16 60:26 98:28 99:10 102:8
not the	11:11 35:23 53:8 102:8
crown==ing	42:18 97:13 98:-8 102:57 103:35
hour and	103:12 107:16
hour _ a	103:14
press @day	16:-13 100:-10 104:52 105:34 123:-9
, @day	26:11 29:34 117:21
to half	51:8 104:11
half past	53:11 106:14 110:16
#n _ half	51:8 104:11 106:15
half _ #n	53:11 106:14 110:16
@day _ -	51:14 53:10 104:19 108:10
dec==	16:-9 46:31 52:13 104:10 111:17 115:13
dec	16:-9 46:31 52:13 104:10 111:17 115:13
#n dec	16:-8 46:31 104:10 115:13
soon ,	9:12 16:-8 104:10
, for	0:-16 5:-8 6:24 10:22 11:16 16:-18 20:16 36:58 49:11 53:9 69:20 74:8 81:-10 104:20
down _ a	104:10
for _ bench	6:10 104:10
it ,	0:13 3:-9 15:-8 17:-18 28:9 33:12 36:8 39:12 40:8 44:9 49:10 56:11 58:13 64:10 69:-10 71:11 77:10 91:8 94:-11 96:8 97:-10 100:-9 105:19 109:-8 116:8 122:-9 123:-8
need _ ,	3:10 56:8 121:13 123:-16
back _ press	105:24 106:39 123:11
, tru	103:10 106:10
speak==	75:10 106:27
as we	50:9 98:18 106:27 120:12
speak	75:10 106:27
, stop	107:37
brok _ on	107:43
to leav	107:34
leav _ @job	13:-8 107:32 113:21 114:16
phon==e	10:9 13:-23 29:-8 46:10 47:8 56:11 107:41 123:59
phon	10:9 13:-23 29:-8 46:10 47:8 56:11 107:41 123:59
phon ,	107:27
, i've	1:9 33:14 35:13 107:27
minute ago	38:9 42:12 43:8 44:26 74:19 95:14 98:-10 101:21 103:-11 107:36 114:-9
has _ free	29:-8 108:25
off tomorrow	107:-12 123:39
am _ tomorrow	107:-8 109:34
@person gone	61:14 109:22 110:-8
from _ december	52:14 100:10 109:31 110:-13
to _ january	52:15 109:20 110:-9
@person ill	28:-13 29:-10 61:-8 62:-8 109:50 123:60
in _ only	21:51
#t only	53:8 110:13
@day _ here	52:10 110:15
@person _ #t	108:-14 110:27
that _ are	5:10 22:-9 52:-13 111:22
#n urgent	13:43 17:-9 29:-12 112:38
gig==	52:10
gig	52:10
gig ,	52:11
, her	57:11 109:12
her @job	29:12 47:12 112:17
once==	4:-9 16:28 25:16 30:-13 42:-9 50:15 61:-13 62:36 68:18 74:8 101:52 113:23 123:44
once	4:-9 16:28 25:16 30:-13 42:-9 50:15 61:-13 62:36 68:18 74:8 101:52 113:23 123:44
job _ only	1:76 2:14 17:-9 113:20 123:-14
@job wait	113:16
after lunch	43:-11 106:-8 114:13 123:38
another _ at	114:10
@day _ lunch	114:13
oop==s	122:23
scrub==	118:13 122:23
oop	122:23
scrub	118:13 122:23
scrub that	118:13 122:23
that last	92:-10 122:57
, undo	122:50
no _ ,	64:10 85:9 89:33 98:18 122:37
wrong ,	17:17 68:16
was _ ,	1:10 38:-10 60:11 111:11 116:9
thes==e	12:16 28:10 29:-10 48:10 64:14 77:-8 87:-10 102:18
thes	12:16 28:10 29:-10 48:10 64:14 77:-8 87:-10 102:18
sander thes	102:18
thes day	12:16 48:10 87:-10 102:18
, level	17:34
the _ thes	102:18
sander _ day	102:18
thes _ ,	48:10 64:14 77:-8 87:-10 102:18
, _ need	31:9 43:11
push==	2:8 24:17 46:31 84:10
push the	2:9 24:14 46:13
down #d	40:9 91:57
scratch==	47:11 86:29 105:42 122:13
scratch	47:11 86:29 105:42 122:13
^ scratch	86:32 105:34 122:13
scratch @person	105:34
@person press	105:34
scratch _ press	105:34
bar _ call	84:9
#n _ along	84:10
along _ neck	84:9 93:10
neck _ #n	84:10
ground==	41:8 84:12
ground	41:8 84:12 109:15
down ,	24:9 53:8 84:12 107:28 123:9
been _ down	84:12
by _ now	36:32 46:18 84:12
log==s	58:17
user==	58:82 59:30 63:-8 97:-8
@person log	58:17
log in	58:17
user	58:82 59:30 63:-8 97:-8
user #c	58:36 59:23 97:-8
log _ as	58:17
^ whoever	58:8 90:11
, that	3:10 5:14 16:-14 21:10 35:-9 42:9 43:14 54:10 58:9 69:8 70:10 90:16 122:10
as _ ,	17:10 23:-8 29:8 41:39 94:42
#c _ that	58:9
that _ @person	58:9
@job sold	47:24
sold the	47:23 99:22
)~"
R"~(doing it	15:8 47:22
strik==e	25:-8 46:10 47:18 56:24 99:45
strik	25:-8 46:10 47:18 56:24 99:45
^ strik	47:20 99:30
strik the	46:10 47:19 99:8
, just	17:11 97:10 110:11
tomo'll==	110:17 111:-8
tomo'll	110:17 111:-8
@day the	28:-14 30:25 46:-11 53:37 110:16 111:-10
wire off	72:16
delivery #n	72:99 119:13
get _ wire	72:27
wire _ delivery	72:27
@job :	40:21 43:10 69:31 73:35 74:11 81:-9 88:15 91:9 92:10
like the	53:-8 54:18 73:9 104:13 123:-8
lot _ ,	0:8 120:10
weekday==s	51:69 74:-16 88:-12 108:29
weekday	51:69 74:-16 88:-12 108:29
weekday #n	51:33 108:29
time _ ,	42:-8 77:9 107:13 108:29
weekday _ to	51:33 108:29
no @person	46:-8 108:22 109:17
@day _ more	108:36
fret and	77:9 82:13
as its	82:13
its own	2:-12 5:12 82:13
and _ them	71:10 82:13 95:11
mark _ as	42:14 82:12
own $	2:-12 5:12 82:13
lock==	82:19
lock	82:19
#n inch	67:14 84:13
inch of	1:11 67:13
inch _ @wire	1:11 67:13
come _ #d	2:-8 40:11 65:16 67:13 79:8
piece _ and	69:-19 80:41 81:42
and _ ,	2:14 17:24 20:13 21:11 23:25 29:16 38:8 41:-8 61:10 69:19 108:12 110:-8
join==ed	97:19 99:23
the join	97:19 99:23
of machine	97:19 99:29
machine ,	29:32 34:11 97:18 100:9
, ther	46:16 50:8 82:8 86:-11 97:31 107:19 111:11
the _ should	1:22 17:10 33:11 97:19
list _ machine	14:-8 97:19 99:29
wise ,	97:27
press .	97:17
know==	4:12 11:18 13:14 16:-12 25:17 28:15 35:12 44:10 68:17 82:11 94:-9 101:10 109:-10 123:12
worn==	39:13 80:11
know	4:12 11:17 13:13 16:-12 25:17 28:14 33:-14 35:12 44:10 60:10 68:17 82:10 94:-10 101:10 109:-11 123:42
know what	82:11
due ,	11:20
worn	39:13 80:11
after #n	54:20 92:21 113:28
: _ is	16:10 17:-11 25:10 44:9 47:23 92:13 102:-8
#n _ its	44:35 92:19 114:-8
specially==	51:-10 53:16
open up	51:-10 53:26
specially	51:-10 53:16
make that	98:28
arbor==	98:47
renam the	98:49
arbor	98:47
renam _ press	98:49
gone ,	20:9 99:23
forget the	85:16 121:32
the clos	31:48 52:-21 111:91 123:-10
scrap _ clos	111:29
the login	59:17
from @person	40:10 58:-16 59:60 63:-15 64:44
away _ @person	59:13
, off	5:56 17:34 47:-10 70:23 99:23 105:24
join _ ,	57:11 99:24
strik _ from	25:-8 56:25 99:41
from _ machine	25:-8 99:54
today was	61:29
was @person	28:-13 33:9 61:29 109:-18 123:43
last day	9:16 61:29
@person _ day	61:29 108:8
last _ ,	20:12 61:29 91:14
, _ left	61:15
un==	61:-27 62:57 82:-11 83:28
un	61:-27 62:57 82:-11 83:28
un -	61:-27 62:57 82:-11 83:28
- retir	61:-27 62:57
un _ retir	61:-27 62:57
drago==	57:15
drago	57:15
new ,	2:8 57:15 84:9
, bench	57:22
, _ role	57:22
role $	14:13 57:18 60:13
minute now	34:14 98:-10 103:29
recheck==ing	37:-9 44:10 88:-10 103:26
go _ what	37:-10 83:-13 103:26 123:16
me about	13:35 50:21 123:-22
about @wire	9:11 50:29 123:-26
till it	50:22 96:14 123:-20
not _ me	50:22 107:14 123:-23
till _ is	50:22 113:22 123:-20
mistak==e	111:17 122:22
mistak	111:17 122:22
mistak ,	111:17 122:22
my last	122:21
my _ entry	122:21
bench from	60:30 63:-11
door _ from	60:30 63:-11
crown :	87:9 102:47
@wire _ :	8:-8 19:16 38:10 65:36 67:9 68:-8 87:9
bur==red	68:20
once the	50:8 68:20 123:20
bur	68:20
off ,	6:9 17:9 32:13 49:8 68:20 111:14
put that	61:28 68:20 102:9
is _ #c	67:9 68:20 84:9
public==	52:38
public	52:38
public holiday	52:38
nobody in	52:23 64:8
holiday _ #n	52:23 109:13
^ weekday	51:48 74:-12
and #t	51:14 53:-10 74:-10 108:13
we _ do	33:26 51:13 74:-10 118:12 123:23
now _ #n	41:17 51:13 81:-8 120:12
stick on	66:13 70:13 81:-10
scal ,	45:11 66:8
#n gram	66:8 67:14
scal _ #n	45:11 66:24
out and	94:33
, reseat	94:20
back _ ,	94:16
in _ reseat	42:21 94:8
to save	2:17 37:18
not _ to	2:9 3:10 23:22 37:23 64:32 113:15 121:10 122:21 123:-49
, would	11:12 13:9 16:13 25:18 26:8 37:19 82:10
be too	0:15
it _ too	0:14 43:8 90:10
yet ,	15:19 123:15
pretend==	43:-30 123:57
pretend	43:-30 123:57
expect==ing	49:-11 65:-12 123:38
@wire _ week	49:-20 65:-13 123:50
but==	3:9 24:9 38:-14 42:12 54:13 57:14 78:-17 88:12 105:14 111:9 116:14 123:54
but	3:9 24:9 38:-14 42:12 54:13 57:14 78:-17 88:12 105:14 111:9 116:14 123:54
#n but	88:10 123:24
but i	123:13
i did	35:-9 69:8 71:10 122:10 123:17
piec _ but	123:24
but _ did	123:13
not $	3:12 40:-10 88:37 92:10 123:-11
not want	3:10 47:9 105:16 121:25 122:10 123:-19
want job	15:-8 33:-10 123:42
suppos==e	16:37 29:14 123:36
suppos	16:37 29:14 123:36
^ suppos	16:37 123:37
press _ not	100:-19 123:41
@person put	33:15 49:14
no need	36:-15 51:-8 123:82
to add	38:-14 119:20 123:38
add that	123:24
that #d	35:13 123:24
to _ that	42:15 101:13 122:20 123:19
round==	5:21 18:9 25:12 28:9 38:8 67:10 87:9 93:16 103:11
not get	56:17 107:12
get _ to	120:10
if job	5:11 123:17
were done	5:11 33:11
if _ #n	2:10 5:11 35:-10 41:-8 123:31
actually==	3:57 32:10
actually	3:57 32:10
is _ neck	13:84 93:-41
same _ ,	38:58 48:-10
of peopl	57:15 62:9
list _ peopl	57:15 62:9
again _ he	62:24
, _ back	62:10
on new	111:20
new year	52:13 111:19
open _ new	111:20
on _ year	111:20
quit==	42:-8 60:-11 61:79 62:-9 107:13
quit	27:-10 30:19 42:-8 60:-11 61:79 62:-9 107:12
@person quit	60:-11 61:79 62:-9
quit $	60:-11 61:79 62:-9
bar again	84:10 85:12
it away	39:9 59:9 85:14 122:10
take _ away	59:8 85:14 121:13 122:10
in _ ,	0:19 14:11 18:22 20:-8 21:31 22:-8 28:-9 62:13 65:14 71:12 80:-11 81:14 90:8 94:17 107:13 114:11
@wire _ what	5:27 8:10 9:-11 19:-14 33:35
me _ fret	0:15
^ befor	0:12 5:-8 10:8 13:10 14:15 23:8 25:11 33:10 43:13 98:11
befor i	1:-8 10:9 13:10 14:15 16:-15 23:8 25:11 33:10 38:12 43:15
wire :	0:12 19:18
befor _ cut	0:13
leftover==s	0:36 8:-11 21:35 41:-9 78:10
which of	0:40 12:8 15:19 17:-8 22:17 25:11 28:32
of our	0:23 25:14 61:17 62:-11 85:14 119:10
leftover	0:63 4:-8 8:-11 21:35 38:14 41:-9 69:10 81:-10
leftover _ fret	0:37
option==s	0:19
includ==ing	0:29 8:10 14:48 19:14 31:8 52:14
option	0:19
, includ	0:30 8:10 14:18 19:15 31:10
long piece	0:31
#n _ includ	0:32 52:15
pick==	0:12 64:10
you tell	0:9 1:9
could _ tell	0:10 30:9
you _ me	0:8 1:8 4:8 10:13 44:10 123:33
tell _ what	0:9 8:24 25:11
which _ from	0:8 4:13
same slot	0:57 1:-10 4:-14 35:18
allow==ed	0:45 23:22 60:8
allow	0:45 23:22 60:8
if _ fret	0:37 3:21
allow $	0:48
mm bit	1:11 38:-10
#d _ bit	1:12
could piec	1:26 123:-12
piec _ go	1:19 123:-14
go _ in	1:16 37:13 123:-12
#n raw	1:10 38:10
@wire _ with	1:11
best==	1:49 2:29 74:-9
best	1:49 2:29 74:-9
;==	2:24 18:10 39:18 74:-10 77:10 119:9 120:10
, both	1:10 3:-8 38:13 69:20 101:14
;	2:24 18:10 39:18 74:-10 77:10 119:9 120:10
mm _ both	1:11
could take	103:-8 123:34
could _ a	1:9
take _ fret	1:9
lose==	1:9
lose	1:9
the least	0:-9 1:30 2:11 5:8 41:17
would _ the	1:23 48:9 54:18 112:11 123:-8
least _ piec	1:18
mean==s	1:9
: wher	1:15
wher ,	1:20 2:10
if it	1:9 2:10 50:24
it _ cut	0:12 1:9
wher i	1:11 88:18
me _ i	23:14 28:12
i _ put	1:11
everyth ,	61:10
#n _ long	0:22 67:14 84:8
would piec	1:15
piec _ be	1:10
#n _ any	18:32 64:13
be _ use	1:10
i found	1:21 68:13
which open	1:28
open _ doe	12:-21 14:41
job _ a	43:12 76:-8 94:15 96:9
by _ at	11:13 45:9 63:15
, when	9:51 11:17 28:12 29:18 30:30 45:-8 102:9
when was	11:26 19:18
was it	11:26 19:18 33:8
it promis	11:44 46:-8
, _ was	11:25 21:17 60:11 62:9 96:10 103:10 111:11
due up	11:17
due _ to	11:12 46:13
fortnight==	10:12 11:12 46:17 115:11 119:14
fortnight	10:12 11:12 46:17 115:11 119:14
fortnight ,	11:13 46:17
recheck i	11:9
i mean	11:32 15:8 27:9 28:9 29:-11 49:12 52:10 103:10
at _ today	104:12
, _ i	0:-12 6:8 18:9 39:8 43:11 48:-10 49:11 52:-10 63:18 65:8 86:-9 87:10 96:12 106:8 107:10 109:11 110:10 123:-10
recheck _ mean	11:9
mean $	11:30 27:10 103:11
recheck due	54:20
due this	11:20
due _ afternoon	11:9
pressing==s	11:44
pressing	11:44
even==ing	11:10 26:8 53:11 65:11
fall _ this	11:14
few==	2:29 27:8 79:-10 123:19
mov along	2:21 79:-10
along so	2:20 79:-10 123:-10
few	2:29 27:8 79:-10 123:19
few must	2:13 79:-10
be made	2:13 47:27 79:-10 123:-10
few _ be	2:13 79:-10
must _ made	2:13 79:-10
made $	2:13 79:-10
around so	2:12
so that	2:11 35:11 38:11 42:13 76:16 111:11
as few	2:12
few as	2:12
as possibl	2:12 5:17
, tin	2:19
: _ fret	43:11
so _ we	52:11
few _ possibl	2:12
slid==e	2:28 89:16
slid	2:26 89:16
slot nutward	2:17 74:10
)~"
R"~(^ work	2:13 79:-10 107:32
work out	2:17 79:-10
, _ came	2:13 79:-10
i'd==	2:17 13:12 25:9 29:13 35:-11 41:-9 44:-8 53:-8 74:-8 94:18 102:-8 104:12 123:71
i'd	2:17 13:12 25:9 29:13 35:-11 41:-9 44:-8 53:-8 74:-8 94:18 102:-8 104:12 123:71
^ i'd	2:14 53:-8 74:-8 78:-17 94:19 104:13 123:50
i'd like	2:14 13:13 29:15 53:-8 74:-8 104:12 123:-8
like to	2:13 13:30 19:10 29:13 123:-8
i'd _ to	2:14 13:13 29:15
it stay	3:23 24:14 76:-15 90:11
is _ long	3:13 67:11 85:-12 123:39
. _ it	3:14 54:20 99:30
can _ stay	3:25 76:-9
stay $	3:25 61:-8 76:-9 109:-8 123:30
acceptabl==e	3:36 40:-14
acceptabl	3:36 40:-14
#d _ a	3:9
side _ ,	3:9 13:-11 16:52 17:-8
is _ acceptabl	3:23
acceptabl $	3:23
short or	3:28 22:10 41:-13
too _ or	3:28 22:10 41:-13
or _ :	3:26 41:-13
check a	0:-15 3:33 109:26
me ,	0:-17 1:-10 3:33 16:8 38:11 54:14 67:11 80:18 104:9
#d _ me	0:-15 3:33 69:35 123:-9
, _ raw	3:24 38:10
^ tabl	16:19
all slot	4:50 13:-9
to see	4:13 19:10 26:8
each slot	0:-11 4:31
to _ how	4:14 13:27 16:-8 34:16 123:12
from _ nut	4:44 35:11 71:-8
distanc==e	4:31
distanc	4:31
distanc from	4:31
nut to	4:15
distanc _ the	4:31
nut _ slot	0:13 4:9
length for	4:46
last _ fret	4:22 92:10
, _ through	4:20 33:25 51:35 74:-9
so the	4:-8 54:10 56:12 64:10 72:18 101:12 105:12 113:10
least new	5:9
least _ wire	5:9
touch==ing	5:16
many fret	5:15 13:23
wire _ how	5:16 8:13
, _ many	5:13 8:10 9:17 25:23 97:20 98:15
how _ fret	5:15 13:23 91:12
get cut	5:16
each _ of	0:-13 4:18 5:14 24:9 27:12
plan _ cut	5:22
cleverly==	5:9
cut it	5:8 59:12
cleverly	5:9
for _ wire	8:25 97:15
rule==	4:-8 6:22 16:-9 17:10 68:10 75:8 88:11
mark on	6:23
rule	4:-8 6:22 16:-9 17:10 68:10 75:8 88:11
the rule	4:-8 6:23 68:10 75:8 88:11
when i	17:9 28:11 38:-10 44:10
on _ rule	6:23
list with	10:17 14:28
with _ rule	75:8
rule _ for	6:17
, to	74:8
to print	87:21
, _ print	38:14
print $	6:8 123:14
am about	4:11 6:13
about to	4:11 6:13
, print	6:16
#n _ print	6:13 81:20
print _ list	6:18
label ,	7:35
bin _ ,	7:12
is _ hand	8:51 29:-23
@wire stock	8:36 9:-9 65:36
what _ ther	0:22 8:63 9:-9 13:-9
have any	8:21 9:-9 12:15
any _ left	8:34 9:-9
wire we	8:17 9:-8 11:-9 117:15
me _ wire	8:17 20:18
wire _ have	8:17 19:9 70:11
stick and	5:10 8:27 22:-10 116:10 117:-8
and piece	8:27
stick _ piece	8:27
have _ any	8:21 99:8
is lying	8:19
about _ @wire	8:53 9:-11 33:10
^ quick	8:10
: what	8:21 16:10
we own	8:10
quick _ at	8:10
: _ do	8:21
remain==	3:12 8:-16 9:23 24:10 86:14
remain	3:11 8:-17 9:21 24:20 29:13 52:18 61:23 62:11 86:14 116:8 117:-9 123:28
remain $	8:-15 9:23 29:17
each wire	9:26
overview==	9:24 14:12 25:14
wire supply	9:52
overview	9:24 14:12 25:14
dry==	9:17
dry	9:17
of every	4:21 8:20 9:11 16:19
every wire	19:31
to reorder	9:15
plac ,	9:14 52:10 107:14
the _ used	9:15
@wire _ up	9:12 20:17
order ,	9:17 10:41 29:-11 31:9 32:16
, doe	9:21 16:16 18:25 31:-10 73:-11 100:9
cut _ is	9:22 31:-10
we be	9:12
be work	9:12 110:12
be _ about	9:11
about _ run	9:11
doe each	9:19 14:26
be _ in	47:17 59:9 82:11 83:-8 85:12
of what	5:11 83:-12 123:16
what to	5:28 12:-10
what _ order	118:23
whom $	10:20 19:16 23:35 33:23
within #n	10:10
within _ day	10:10
order _ to	116:-9 117:39
this time	10:12 94:11
and what	10:24 11:-11 13:33 17:15 18:9 20:25 29:-14 33:-15
time _ what	10:12
purchase==s	10:47 11:-11 46:-13
less==	10:45 11:-12 50:10 117:11 123:14
purchase	10:47 11:-11 46:-13
less	10:45 11:-12 50:10 117:11 123:14
window _ ,	63:12 102:9
@person _ pleas	12:14 108:10
many job	12:13
work ,	12:24
the _ work	12:23 28:27 29:-8 53:11 101:12
open _ ,	0:10 1:-10 12:24
belong to	12:11 14:15 58:19 64:32 77:-8
back a	13:32
back _ fret	13:32
up @job	13:60 106:11
play==	13:24 60:11
play	13:24 60:11
number _ and	0:-8 13:25 80:11 94:13
card==	13:45
card	13:45
progress==	13:92
progress	13:92
on number	1:-10 13:44 16:14 37:-15 64:45 81:18
staff==	12:-9 13:-9 14:130 15:20 22:8 25:-8 29:11 59:9 62:24 82:32 123:-9
staff	12:-9 13:-9 14:130 15:20 22:8 25:-8 29:11 59:9 62:24 82:32 123:-9
^ staff	14:116
staff $	5:10 14:80 62:26
team==	14:18
team	14:18
and who	10:12 15:-8 25:10 28:21
thos==e	0:28 3:-9 14:42 17:13 21:11 28:-8 42:15 56:11 80:10 96:13
thos	0:28 3:-9 14:42 17:13 21:11 28:-8 42:15 56:11 80:10 96:13
includ thos	0:12 14:30
thos that	14:30 31:8
doing @job	30:17 46:-12
anybody _ job	13:-11 15:72 17:-11 123:-9
fret==ting	12:36 15:20
of us	15:20 57:11 61:28
is meant	15:20 36:12
meant to	15:20 31:20 123:20
be fret	15:20 72:10
meant _ be	15:20 31:20
be _ @job	4:17 15:21 27:-9
given==	15:29 33:-11 80:9
was job	13:43 15:28 16:-9 33:-14 43:-10 123:-14
given	15:29 33:-11 80:9
given to	15:29 33:-11 80:9
bar _ on	16:26
how $	16:33
with _ long	85:13 93:11
, _ pass	16:30
short _ for	16:10
i see	26:14 34:26
see the	26:14 34:26
group==	16:20 18:19 120:10
press :	33:-9 44:14
group	16:31 18:19 120:10
group _ the	18:9
matter==	16:23 106:14
suppos the	16:23 123:11
matter	16:23 106:14
#n _ doe	16:15 18:14 30:10 100:9
once more	16:30 30:-12 61:-13 62:36 101:53 123:35
and load	16:20
#n _ go	1:9 16:10 37:9
take ,	16:17 28:8 78:11 82:11 107:20
, list	12:29 16:17 22:21
, _ each	16:17 98:12
@job may	23:9 83:9 113:12
far ,	17:12
, as	17:11 57:-11 62:15 97:20 98:17 112:9
a tabl	16:9 17:12
#n _ far	17:12 33:12
, _ a	0:-9 1:15 5:53 10:13 17:11 38:-8 57:-9 62:14 86:22 89:8 103:8
as _ tabl	16:9 17:12
tabl $	17:10 24:14 56:78
look along	93:10
along _ @job	2:10 17:-9 44:8 88:19
high _ low	17:36
about _ on	52:-9 111:-10 123:33
straightedg _ ,	88:12
#n pleas	6:11 11:20 17:22 35:-12 36:32 37:17 82:-11 83:11
job _ pleas	6:11 11:20 17:22 82:-10 83:12
flat enough	17:20
it done	17:15
it _ with	17:15 40:-10 91:10
proud $	17:26 88:19
to what	17:11 18:11
what we	17:11 118:23
just the	17:31 97:10
and _ i	69:-12 81:23
@wire hold	9:12 18:23
if _ slot	18:18 73:-10
@wire all	18:9
@wire _ right	18:15
@wire group	18:19
group in	18:19
will _ group	18:19
flat -	2:-10 18:12 73:8
- bottom	2:-10 18:12 73:8
deep enough	18:11 42:10 90:22
flat _ bottom	2:-10 18:12 73:8
bottom _ #d	2:-10 18:11 73:19
@job _ doe	0:12 18:14
should the	5:10 18:24 123:23
be bent	18:36
be _ to	0:20 5:-8 18:24 53:-8 57:28 64:26 68:10 110:23 123:15
ther and	21:10
did they	19:15
what _ they	19:15
their crown	19:21
all _ with	19:15 42:12
: when	19:18 119:20
by whom	9:-12 19:17 26:11 29:16 32:30
@wire add	20:17
up in	5:17 20:13 93:10
in september	20:19 21:14
^ sinc	20:11 33:19 36:11 106:19
november ,	20:8 21:-12 33:21 44:-9 114:22
and out	20:41
over ,	20:8
all time	20:25
left _ ,	20:8
, _ time	20:24 97:12 120:10
last year	20:15 21:41
for _ year	20:16
suit for	18:-10 20:65
, from	20:9 48:9 90:10 108:14 110:-8
tin spar	8:-8 21:14
spar us	8:-8 21:14
the _ spar	8:-8 21:14
was _ and	21:10
and in	9:12 18:-8 20:-8 21:64
@wire only	21:51 22:10
useless==	8:-10 22:88
useless	8:-10 22:88
good _ anyth	22:9
anyth _ @wire	23:22
too many	22:48
many of	9:-11 22:45 25:15
untouch==ed	22:34
^ old	22:21 90:10
untouch	22:34
@wire set	23:23
@wire _ asid	23:23
have _ put	23:18
by _ @job	23:17
being kept	23:22
@wire _ kept	23:12
being _ for	23:22
@job already	13:14 23:10
the _ already	23:17
already $	13:43 16:-9 23:10 43:-10 101:12 106:13 117:24 123:-11
#n _ who	23:14
who _ it	15:-14 23:14 30:10 33:33
reserv _ and	23:40
spring -	24:33 34:12 44:18
- back	24:33 34:12 44:18
spring _ back	24:33 34:12 44:18
fret came	24:21
of spring	34:13 64:14 77:-8
back for	34:14 36:10
, give	75:10
@wire _ give	0:10 1:-9
back==s	24:14
load do	24:23
do fret	123:50
fret _ put	24:11 71:11
pop back	24:18
after it	24:15 92:17
did _ on	99:10
pop _ up	24:18
after _ was	24:15
at it	1:9 25:13 102:-8
are _ machine	29:40
the _ broken	25:9 39:16 106:-11 107:18
run $	25:18 101:14
equipment==	25:43 26:23 34:-10 97:12
equipment	25:43 26:23 34:-10 97:12
stand==ing	14:-9 17:18 25:41 88:16 90:9 101:9 102:12 105:12
machine and	14:-9 25:21 29:14
stand at	14:18 25:19
which $	14:-8 24:34 25:11
time==s	11:15 26:37 27:15 28:8 29:-10 30:-9 32:9
only _ fret	84:10
minute _ polish	27:28
polish _ fret	27:28 42:34 103:-8
step are	27:15 30:-10
report==s	27:22 33:18 103:18
know how	4:13 13:16
long the	4:8
do _ know	4:10 15:11
)~"
R"~(and of	8:43 9:-12 13:-10 27:76
hour _ week	28:33
sander ,	2:10 25:26 26:8 29:16 98:15
to _ late	11:-8 12:-15 29:31
a free	29:46 123:-11
a _ hour	29:28 64:9
replac==ed	3:12 30:11
^ somebody	8:-9 30:16 75:10 123:71
somebody want	27:9 30:8
want #n	30:17
could _ keep	30:13 123:9
i tell	30:33 34:16
tell a	30:9
a customer	18:10 23:15
refret that	76:22
that @person	31:16 42:-10 61:15 66:11 106:17
a _ that	0:9 30:10 73:10
glu ,	30:21
, _ could	4:11 29:14 30:15
what give	30:15
way $	31:29 86:11 93:10
includ the	8:11 31:12
clos one	31:50
still wait	11:-9 12:25 31:30
we _ wait	11:-12 31:30 117:15
that has	31:23 64:13
we _ that	8:-10 19:19 23:18 31:10 76:22
and till	28:-11 31:24
are _ wait	12:27 28:-11 29:-8 31:23
wait _ for	28:-11 31:24 113:14
wire _ and	5:10 28:-11 29:-9 31:24
, _ till	9:27 28:-12 29:-8 31:21 53:8 100:12
and _ when	28:-11 29:-8 31:24 113:12
, pleas	0:15 20:-12 29:21 31:15 34:25 38:-8 51:-8 57:13 58:16 72:15 82:8 83:9 97:-15 99:23 102:-10 105:29 108:8 121:24 123:-17
pleas ,	11:22 31:17
order _ ,	5:22 10:8 49:-12 116:47 117:24 118:8
pleas _ all	19:19 23:37 31:16 83:12 123:-8
, _ wire	5:31 21:12 31:16 45:9
doe lindwurm	27:-21 32:64
lindwurm take	27:-21 32:23 120:12
size==s	7:16 32:31
at lindwurm	32:50 118:41
from ,	32:21
long did	32:13
really take	32:13
long _ they	32:16
lindwurm _ its	32:38 121:13
, _ mean	15:8 28:9 29:-9 52:10
wire pleas	32:40
@wire _ pleas	32:40
enter==	29:-11 33:60 38:12 51:-8 71:-10 108:9 122:46
what @person	29:-8 33:58
enter	29:-11 33:60 38:12 51:-8 71:-10 108:9 122:46
who put	26:15 33:18
, _ put	49:10 57:9 63:11 66:-12 68:13 102:9
^ log	33:90 38:14
log $	33:124
has anybody	21:-8 33:27
anybody _ the	14:-8 21:-8 28:24 33:16
explain==	34:55
command==	34:84
explain	34:55
explain the	34:38
command	23:-9 34:128
the _ command	34:50
command $	34:50
command==s	23:-9 34:45
question==s	23:-9 34:45
more of	34:13
do _ ask	1:-8 34:13 39:14
i _ that	75:8 122:-24 123:71
the command	34:34
, show	23:21 28:11 34:12
what #n	34:14 67:10
#n _ say	34:14 116:9
any _ at	0:19 36:-9
@job ;	0:12 18:10
tin have	0:11 80:11
the _ ;	0:12 18:10
; _ the	0:12
have _ ,	0:11 16:9 33:9
after ,	0:45 104:18
pull _ out	0:11 3:10 71:-9 123:-10
out _ for	0:11
someth _ #n	0:36 71:-9
, _ one	0:25 31:9 71:-9 95:8
may _ off	1:9 109:-8 123:24
i still	1:15 123:19
still make	1:15
could _ still	1:15
i _ make	1:15
piec _ on	0:-9 1:13 35:9
would go	0:10
, _ done	42:21
, _ go	107:29
away with	2:11 99:38
if they'r	2:11 123:12
they'r mov	2:11 117:32
with _ new	2:11
#n _ they'r	2:11 123:12
shuffl==e	2:77 13:-11
shuffl	2:77 13:-11
shuffl the	2:22
nut ,	0:17 2:12 33:-9
, using	2:22
tin has	2:12
shuffl _ fret	2:22
, _ what	0:-9 2:17 4:11 5:-10 8:-13 9:-12 10:26 13:-9 16:9 17:23 19:50 24:8 26:8 29:-15 32:28 33:10 112:19 123:-10
, dress	1:32 3:27 49:-13 79:-10
dress ,	1:32 3:27 42:33 49:-13 79:-10 106:-8
@job _ :	2:10 3:11
mm _ dress	3:10
fret length	4:34
@job _ wher	4:15
else==	36:10 37:26 64:25 96:11 98:9 112:13
and noth	5:12 22:-9
else	36:10 37:26 64:25 96:11 98:9 112:13
noth else	96:11
else ,	112:13
tin _ noth	70:8
, _ get	56:12 120:10
what _ cut	5:23 12:-10
for cut	6:17 122:9
list _ cut	6:15
want the	6:10 7:15 102:23 105:13 113:11 123:15
- millimetr	7:10 73:8
get new	7:9
could _ get	7:9 22:10 107:12
drawer _ ,	78:8 81:17 95:-8
only _ @wire	22:54
and _ all	8:43 9:-12 44:10
@wire _ how	8:16 9:17
, _ much	8:49 9:-12
like _ ,	9:13
doe _ hold	9:13 90:10
together==	5:17 9:38 10:13 17:13
and all	9:39 41:13 44:10
together	5:17 9:38 10:13 17:13
the _ together	5:15 9:38 17:14
together $	9:39 10:13
on december	11:10 111:11
fall _ the	11:15 46:-10
tomorrow _ ,	100:10
, _ due	12:18
pleas _ the	6:-9 10:14 11:14 14:25 17:39 33:28 34:24 35:13 50:9 68:9 85:11 94:12 100:-8 102:9 109:14 111:10
mess==ed	11:19
mess	11:19
up _ @day	52:10
moment==	12:36 25:9 29:10
fret at	3:8 12:36 40:10
moment	12:36 25:9 29:10
moment $	12:36 25:9
the print	6:9 47:14
just _ the	0:9 4:-8 18:8 29:11 42:32 43:9 106:15
how _ it	13:15 16:17 34:19
sit at	57:11
which _ ,	7:16 10:14
, _ whol	52:9 53:11
the _ staff	0:10 5:10
, still	3:-11 16:19 44:9 120:8
what _ only	5:-10 16:38
sunk $	17:31 88:17
high==s	17:35
low==s	17:35
and low	17:35
@job should	17:10 46:10 64:11
with _ edge	44:10
job _ along	88:10
sit==	57:12 74:8 81:11
^ with	0:21 35:13 51:-8 75:8 81:11 88:9 96:11 108:10 113:11 120:34
bottom ,	2:-10 73:20
@wire sit	18:8 81:11
sit in	18:13 71:-8 74:18 81:11
flat _ ,	15:8
sit _ the	57:12
hold in	8:11 18:51
, _ did	20:8 35:-8 69:9 71:10 122:10
did _ all	21:12
sum==	20:59
sum	20:59
: _ receiv	20:18 33:15
scrap and	21:17
tin _ ,	5:23 13:-8 22:45 38:-10 119:9
week ,	26:10 28:19 29:8 30:24 51:-10 53:30 115:8
@wire _ been	22:8
been _ for	0:-8 22:8 23:39 35:13 83:18
, _ day	11:20 22:35 26:9 100:9
could be	0:13 90:20
@wire one	22:54 49:11 81:8
keep for	23:33 83:14
for whom	23:57
^ was	13:45 16:-9 28:-12 43:-10 109:-17 123:35
asid ,	23:28
set _ ,	23:28
and _ which	14:13 15:10 29:12 33:8
: how	2:10
up ,	14:10 16:12 31:21 35:-9 64:11 69:9
and give	39:12
back _ and	23:12
, _ give	37:9 78:11 105:12 114:15 119:17
and _ me	112:9
can work	25:17
once $	25:17
true a	27:11
a board	27:11 70:14 103:10
edge==s	41:14
corner==s	27:49 103:35 123:18
, usually	5:-9 27:45 103:9
usually $	5:-9 27:45 103:9
from _ through	28:12 109:17
for _ press	26:28 84:15 104:-9
has _ a	29:16 56:12
@day _ #t	29:20 51:-10 104:9 108:10
overload==ed	29:10
overload	29:10
week _ how	29:10
so it	3:-11 18:8 20:10 24:13 29:8 40:15 50:9 76:-10 93:8 94:16 100:17 118:13
so _ is	3:-14 4:11 16:17 32:8 35:9 38:10 40:14 41:-12 50:8 64:-8 76:-11 78:8 94:17 98:11 100:16 109:8 118:12
, glu	30:29
delivery date	11:13 30:18 31:12 117:12
refret ,	30:29
delivery _ for	30:18 72:9
can _ tell	30:19
would job	16:10 43:-10
someon==e	37:28
someon	37:28
drop off	28:8
they have	118:19
drop _ a	28:8
#n _ neck	93:16
round _ ,	103:11
they _ it	115:12
one as	31:38
one _ well	31:38
averag==e	27:19 29:-12 32:49
averag	27:19 29:-12 32:49
, _ when	9:12 28:15 29:8 30:9 33:14 109:-9
enter $	33:38 122:47
report sinc	33:28
my _ report	33:18 122:24
own _ sinc	33:18
ever do	33:26 54:10
anyth with	1:-9 28:8 33:24 39:9
ever _ anyth	1:-9 33:24 39:9
report _ the	27:14 33:10 101:13
: who	25:10 33:14
book command	34:16
on _ machine	26:10 34:12
book _ ,	34:11 105:24
machine _ the	25:14 34:11 100:10
, _ book	26:12 34:12
manual==	34:46
manual	34:46
in here	34:46 57:13 114:11
tell you	34:17 112:20 118:10
you that	34:19 118:10
do _ tell	34:19
i _ you	33:13 34:16
tell _ that	34:19 118:10
that _ fret	35:-8 69:9
it _ a	0:8 38:9 56:16 93:24
levell _ for	17:40 27:28
august==	18:-8 20:46
september ,	21:18
, with	2:9 16:-10 18:17 27:13 41:11 48:15 53:-9 55:8 63:13 71:14 73:-11 79:-10 81:-8 92:14 104:9
no .	0:10 15:17 35:15 37:12 46:-8 47:10 69:30 72:12 101:20 105:26 116:10 123:-10
. #n	0:8 15:16 35:27 37:10 46:-9 47:9 69:26 72:11 74:-11 76:-8 84:19 91:27 92:10 97:13 101:18 104:-8 105:25 116:19 119:13 123:-12
. _ for	0:-9 35:19 36:9 69:31
^ pleas	0:-15 1:9 2:14 5:-8 6:-18 14:15 15:19 17:15 18:10 19:12 20:-11 22:19 23:24 25:9 26:9 28:-8 29:-15 33:13 34:11 35:14 40:11 42:-19 44:-9 46:-10 47:17 48:8 49:-10 56:12 58:8 62:8 63:-8 76:-10 82:-12 83:-15 85:9 89:-8 90:-10 91:-11 95:8 97:9 99:-14 105:-9 107:10 109:11 114:15 121:-9 123:-13
^ go	35:11 56:18
go ahead	35:11 56:18
ahead and	35:20 56:18
go _ and	35:11 56:18
yesterday afternoon	39:18
at half	106:14 110:16
===	35:39 67:9
=	35:39 67:9
, same	35:20 94:44
#n ther	35:23
ther ,	10:14 25:22 35:23
the other	6:10 14:26 35:21 49:-12 82:-8 83:14 91:26 116:20 123:-14
other #n	35:21 49:-12 91:19 113:24 116:21 123:-11
i _ up	9:8 35:23
piec _ ther	35:23
ther _ not	35:22 92:22 123:13
have used	123:23
, but	24:9 42:12 105:17 116:14
i _ have	123:37
#n _ but	123:10
a _ longer	35:-11 68:14 123:14
i'd _ it	35:-10 123:32
it _ slot	35:-12 36:15 69:-10 123:14
reserv _ .	36:16 82:41
be kept	36:10 37:9 82:22
piec _ is	1:-11 35:8 36:43 39:14 68:48 69:-13
to _ kept	36:10 82:22
kept _ the	36:14
on _ #d	36:12 67:8
save the	2:11 35:-8 36:16
@job top	35:-8 36:16 40:13
top fret	35:-8 36:16 40:13
the _ top	35:-8 36:16 40:12 87:9
)~"
R"~(top _ ,	35:-8 36:16 40:13
side for	23:20 36:14
i've _ the	0:8 1:-11 10:10 16:12 35:11 36:14 85:8
side _ @job	36:15
think==	3:18 30:8 37:-9 123:37
i be	5:10 29:18 123:10
think	3:18 37:-9 54:13 123:68
you think	3:10
i _ hold	37:9 123:14
, _ you	3:9 9:19 26:13 33:18 37:18 72:9 113:22 122:12
do _ think	3:10
think $	3:18
@wire again	37:20 50:23
. _ ,	37:24 38:18 74:-8 104:32
, _ will	3:10 18:9 28:-12 37:23 52:-8 85:11 110:17 111:11 114:16
on piec	1:-13 37:38 39:9
go back	37:25
can _ back	37:25
may have	33:9 37:40
#d now	37:28 41:14 77:11
reservation==	26:19 35:-11 37:43 39:-8 105:64
the reservation	35:-10 37:52 105:26
#d stick	37:18 69:19
would you	0:-8 13:10 26:14 37:19 105:8
reservation _ the	26:37 37:14 105:26
it _ again	3:8 37:19 94:41 122:12 123:-12
piec _ was	35:22 37:8 39:11
we'd==	5:9 116:24 123:39
we'd	5:9 116:24 123:39
^ we'd	123:32
only _ @job	17:8 123:19
cancel $	105:35 123:16
: @wire	38:11 65:13
into drawer	78:10
@wire _ drawer	38:14 81:15 95:-8
get #n	32:13 38:12 69:10
#d /	38:11
of _ cm	50:24
across ,	38:10 41:10
, bend	79:8
, _ radius	79:8
bend _ #c	79:8
overall==	5:22 29:-13
was put	83:20
overall	5:22 29:-13
^ in	0:-8 3:11 20:14 21:-10 28:12 53:10 75:17
tin now	71:11
now :	25:10 38:8 102:-8
now _ @wire	117:10
#n _ drawer	38:-8 78:26
#n print	38:14 40:21
print #n	38:14 40:21 50:11 87:20
so call	38:14 118:12
print _ ,	38:14
#n _ both	38:14 69:21
off _ so	38:14
leftover==	0:27 38:14 69:10 81:-10
i've got	0:9 10:10 16:12
a leftover	0:9
leftover of	38:14
i was	1:14 13:10 28:10 37:9 38:-23 41:10 42:13 45:-8 103:10 123:10
was going	38:-12 123:11
tin but	38:-12 78:-17 123:33
but it	38:-12 111:9 123:14
the _ but	38:-12 78:-17 123:33
bit for	38:10
for drawer	1:-8 38:22 78:8
#d millimetre	1:9 7:9 40:17 91:11
millimetre ,	7:10 38:11
and _ millimetre	38:19
has gone	39:11 74:12 105:12 121:18
gone in	39:11 74:9 80:11 122:10
piec _ has	35:12 39:27 69:12
#n _ gone	39:11 74:12
gone _ the	39:11 74:9 80:11
becaus of	39:13 52:10 80:10
reckon==	8:-8 9:15 17:-12 18:33 23:-10 29:14 38:10 40:16 47:22 50:13 58:8 59:10 63:9 68:8 90:15 91:10 103:17 113:10 117:9 123:-10
corrod==ed	39:9
reckon	8:-8 9:15 17:-12 18:33 23:-10 29:14 38:10 40:16 47:22 50:13 58:8 59:10 63:9 68:8 90:15 91:10 103:17 113:10 117:9 123:-10
, reckon	39:9 47:24
reckon :	39:9 47:24
corrod	39:9
, _ :	39:8 40:23 47:23 76:30 81:16
mayb==e	85:-9 123:28
mayb	85:-9 123:28
^ mayb	85:-9 123:28
mayb _ should	85:-9 123:28
at _ print	106:-11 107:19 123:14
mm on	40:13 86:8
on _ caliper	40:36
^ #p	16:-13 40:29 43:29 76:33 85:-16
put down	40:12
as the	18:9 30:10 40:9 72:14 73:-11 92:14
the length	4:36 40:11
check==ed	40:12 90:17 93:11
caliper==s	40:58 68:9
and got	40:12
with _ caliper	2:10 40:12 41:-8
to measur	40:8 75:-8 123:47
have _ measur	40:-12 91:9 123:20
measure ,	40:-17 123:49
fret :	41:11
#o _ :	41:11 75:19
half _ millimetr	18:8 41:10 54:30 73:14
millimetr $	41:11 54:30 91:10
@job pack	3:-10 40:-11 41:36
raw ,	1:-9 2:-8 38:11 79:8
tang ,	87:11 117:14
, so	0:-16 1:-8 2:-20 4:10 5:-20 15:-9 17:-19 20:-8 27:-14 28:14 30:-13 31:-8 34:8 36:17 39:10 41:-8 43:-11 44:-9 45:-12 47:19 49:-11 50:12 51:8 54:11 56:12 57:12 59:10 63:19 64:8 65:-8 69:-16 70:8 72:22 77:-18 81:13 84:-9 86:13 88:-9 90:-9 94:9 95:-8 98:26 99:11 100:11 102:15 104:-9 105:11 109:-10 110:10 114:13 115:13 116:-11 118:27 123:-39
, _ too	1:11 2:17 14:12 95:12
measure _ ,	41:11
short _ it	123:13
, number	41:17 97:12
: fret	41:14
to a	41:14 64:22 84:9 98:11 120:10 123:-12
bent _ a	41:14 93:10
did _ come	123:14
come _ short	123:14
out _ ,	9:12 33:8 41:-10 71:11 123:13
afraid==	41:-11 123:20
afraid	41:-11 123:20
job _ will	41:-11 44:-8 114:13 123:20
clean and	42:28
, start	42:28 106:23
polish==ed	42:35
i've just	18:10 29:11 42:35
complet==e	13:21 42:109 83:13 106:-11
complet	13:21 42:109 83:13 106:-11
tru _ ,	31:21 42:45
as _ for	10:14 42:17
yesterday at	42:18 43:21 75:-9 116:10
- _ -	42:19 81:20
be clos	42:41 52:28
clos ,	42:21
, everyth	17:25 33:24 42:20
be _ ,	4:10 5:-15 10:15 27:15 29:9 42:20
not finish	42:-17 107:29
will go	107:24 123:20
^ thos	42:17
fret have	33:-9 44:14
been press	43:9 74:-9 123:12
as of	97:25 100:10
been _ ,	29:-8 31:10 107:26
of _ an	69:12 81:-11
gave==	43:10 69:41 76:-8 88:-10 94:14 101:10 123:-10
squeez==e	16:18 30:8 43:12
gave	43:10 69:41 76:-8 88:-10 94:14 101:10 123:-10
^ gave	43:12 76:-8 94:15 96:9
#n a	43:11 68:14 75:11 76:-8 94:15 96:9
through _ on	43:11
ran==	38:11 43:21 47:12 66:10 73:9
ran	38:11 43:21 47:12 66:10 73:9
ran the	43:21 73:9
press yesterday	16:-9 43:31
yesterday _ #t	43:21
lot on	43:19
press _ up	43:12 101:12
pass _ ,	43:10 98:12
had fret	43:16 76:17
under #c	43:16
i've _ fret	43:14 95:16
had _ #n	43:16 76:17
of _ under	43:16
not been	123:29
has _ been	29:-8 31:9 123:28
ask==ing	28:9 29:9 43:-8 48:10 87:-10 123:39
, _ gaug	43:-8 123:39
noth has	5:10 22:-9 44:26
noth _ mov	44:30 114:-8
mov $	44:30 114:-8
sprung==	17:-11 24:31 44:27
i had	23:8 44:10 68:16
sprung	17:-11 24:31 44:27
have sprung	44:13
i _ my	44:9 48:-10 87:10 123:39
#n _ sprung	44:26
sprung $	44:26
recheck ,	44:9
lift $	1:-11 44:56 52:-11 83:29 111:48
, _ shop	32:11 44:10
#n had	44:13 71:11 94:9
#n _ get	44:11 88:-10
: the	33:-9 44:14 93:11
have _ go	33:-9 44:14
let _ on	33:-9 44:14 53:8
, _ rest	17:-11 44:20 116:9
mirjam==	123:25
mirjam	123:25
, owner	45:9 84:-8
wire _ #c	115:9 119:17
, _ scal	49:11 66:-18 123:9
mate==	9:-10 12:11 19:16 20:-8 23:12 24:11 27:10 28:11 31:16 34:14 37:13 45:9 46:-14 47:12 60:12 68:9 84:-8 100:14 104:10 109:21 115:8 123:-11
mate	9:-10 12:11 19:16 20:-8 23:12 24:11 27:10 28:11 31:16 34:14 37:13 45:9 46:-14 47:12 60:12 68:9 84:-8 100:14 104:10 109:21 115:8 123:-11
, mate	1:-11 9:-9 12:11 14:-9 19:16 23:14 24:11 27:11 28:11 31:17 34:14 46:-14 47:12 60:12 68:14 100:14 104:10 109:22 115:8 123:-10
mate ,	14:8 27:13 29:13 30:-8 37:18 45:10 47:13 86:8 89:8 100:16
: _ -	108:11
@job _ mate	24:14 45:10 47:14
: @job	45:20 81:16
, _ with	1:10 14:14
@wire _ scal	45:11 84:-8
instrument==	11:14 45:8 84:-8
dulcimer==	45:9 84:-8
neza==	45:8 84:-8
, fret	0:-8 3:12 40:-26 75:11 76:11 84:-9 89:10 91:25
, far	45:17 84:-17
instrument	11:14 45:8 84:-8
dulcimer	45:9 84:-8
dulcimer ,	45:9 84:-8
neza	45:8 84:-8
nut _ #n	45:28 84:-9
, a	48:8 119:9
pleas _ a	2:21 11:12 12:18 40:20 48:10 57:12
is _ new	40:-9 57:10 94:17 119:10 123:24
@job _ he	46:31
instead of	41:10 45:-8 46:39 53:21 108:-16 110:12
#n _ instead	46:40 117:10
new date	30:-9 46:45 117:15
, _ #o	30:-9 46:53 64:17
cancell ,	47:15 111:11
ran out	38:12 47:15
the _ ran	38:12 47:15
ran _ of	47:14
money $	21:12 47:15
is broken	47:24
@job took	47:27
took it	47:27
, _ took	47:15 71:11
her==s	47:-8 59:12 123:35
might cancel	47:-9 118:-21 123:72
her $	47:-9 58:21 62:23 123:33
wire fine	48:9
fine ,	48:9 53:9
nickel==	48:24 119:10 123:69
silver==	11:10 29:-8 48:24 57:14 109:9 123:36
low ,	17:24 40:-11 91:27
nickel	48:24 119:10 123:69
silver	11:10 29:-8 48:24 57:14 109:9 123:36
nickel silver	48:24 123:41
silver ,	48:24
nickel _ ,	48:24
silver _ crown	48:10
density==	48:11
density	48:11
'==	2:8 10:16 48:9 78:10 87:-8 91:13 94:10 106:13 113:14
'	2:8 10:16 48:9 78:10 87:-8 91:13 94:10 106:13 113:14
is new	84:10
, come	2:-8 79:8
new _ crown	97:14
over _ ,	38:-8 77:9 88:16
defin -	119:8
wire name	48:16 87:-10
, material	48:12
- _ name	119:8
name _ ,	48:12 57:10 87:-11
a _ kind	97:13
creat==e	48:11 57:13 97:13 119:9
creat	48:11 57:13 97:13 119:9
pleas creat	48:11 57:13
creat a	48:11 57:13 119:9
crown ,	3:-10 76:17
stick length	48:11
creat _ wire	48:11
not _ a	39:20 112:16 123:11
lindwurm $	32:-9 115:13 118:20 121:9
stick ,	8:23 49:21 115:21 116:-13 119:15
from ferro	5:10 22:-10 49:12 118:8 121:11 123:20
daughter for	49:-9 115:16
, _ ferro	120:13
spool ,	49:18 66:-8
, tare	49:14
its _ ,	2:-9 49:18 66:-8 77:9 79:8 91:11
stock ,	2:-10 5:12
into _ ,	95:12
+==	49:15
+	49:15
stick @wire	49:43 116:-12
cm $	50:24
, book	104:11
ferro _ in	32:20
the hair	49:17 69:-8 81:8 115:-8 119:10
at _ hair	49:17 115:-8 119:10
, _ order	31:19 49:17 115:-9
take into	49:17 71:14
stock #n	16:10 49:17
that _ never	1:10 38:-10 49:17
)~"
R"~(that _ is	8:37 42:12 49:11 58:17 61:14 76:16 82:10 87:-14 112:20
gross==	49:8
came ,	49:23 66:-20
gross	49:8
gross ,	49:8
the empty	49:23 66:-20
#n g	49:9 65:-11 66:33 67:28
read to	17:12 49:12 66:-9
#c _ gross	49:8
g _ ,	49:8
, _ empty	49:23 66:-20
empty _ is	49:23 66:-20
spool _ #n	49:12 66:-9
read _ #n	49:12 66:-9 123:10
just now	25:9 49:12 122:12
mean ,	49:12
just _ ,	23:8 49:12 122:13
i _ ,	4:9 16:-15 35:-9 38:11 43:30 49:11 60:12 65:9 69:8 75:10 122:8
, supplier	49:21 119:-9
supplier lindwurm	49:20 117:12 119:-9 121:-8
lindwurm ,	32:50 49:14 115:15 119:-9 120:-9
, pric	49:12 115:-10 116:9
pric #d	49:12 115:-10 116:9
@wire _ count	49:10 65:11 119:-8
#n _ supplier	49:14 119:-8
, _ lindwurm	49:21 119:-9
supplier _ ,	49:14
postman==	49:27 65:-13
postman	49:27 65:-13
took in	49:12
ferro $	49:28 121:20 123:21
hand==ed	15:24 49:8
, each	7:16 38:-8
a hard	49:8
long ,	38:8 49:8 100:10 103:14
, were	49:8 70:10 71:16
hand in	65:15
a _ long	65:9
hard _ ,	49:8
, _ hand	14:9 49:8
in _ ferro	49:22
been deliver	49:13 66:-8 123:17
we bought	49:-9 123:21
bought to	49:-10 123:40
any _ from	123:31
under _ m	50:22
level for	123:30
reorder _ for	123:30
as low	50:18
low from	50:8
as _ from	50:8
^ below	50:13
reorder $	9:41 50:8
again if	3:10 50:24 123:-11
again _ it	50:24 84:10
short _ #c	50:35
<==	50:11
<	50:11
wher it	3:22 35:10 50:-14 123:30
wher _ is	3:16 50:-14 123:30
@day and	51:8 53:-9 108:22 110:-11
and @day	108:22 110:-11
@day :	51:44 110:17
and _ :	89:11
#t and	51:12 53:-9 108:11
- _ and	29:16 51:9 53:-9
the @day	11:10 51:34 53:-10 100:13 123:-8
hour to	51:17
@day _ week	11:-9 117:15
: @day	53:11 108:9
clos _ #n	52:34 111:-20 123:33
electrician==s	52:11
the plac	2:9 14:24 28:14 52:9 123:-8
electrician	52:11
nobody here	52:23 54:14
open this	51:-14 53:11 123:29
from #t	53:8 100:25 104:12
tomorrow ,	10:10 53:12 104:31 109:9 123:28
, until	30:10 53:12
late _ ,	53:12
, _ #t	53:13 104:11 108:8
we stay	53:22
stay open	53:20
open till	53:20
stay _ till	53:20
: _ the	4:-10 53:14 69:-10 74:20
the usual	53:18
usual hour	53:18
december _ #t	53:11 104:9 110:-8
of _ usual	53:9 108:-11
normal==	52:-10 53:18 111:23
of its	53:20
normal	52:-10 53:18 111:23
normal hour	53:10 111:11
its _ hour	53:20
additionally==	30:10 53:30
o'clock==	16:-10 29:-9 53:20 108:10 110:38 114:29
additionally	30:10 53:30
additionally open	53:15
o'clock	16:-10 29:-9 53:20 108:10 110:38 114:29
#n o'clock	16:-10 29:-9 53:20 108:10 110:38 114:29
afternoon _ #n	11:19 53:13 109:12
o'clock $	16:-10 53:9 108:10 110:23 114:31
too _ #n	53:8
the drop	53:21
to open	51:-10 123:57
it would	26:11 123:29
would be	5:14 26:11 123:29
it _ be	26:11 122:9 123:29
gaug read	54:16
#n lb	54:16
lb now	54:16
gaug division	54:16
to euro	54:23
to _ /	54:23
currency==	12:9 23:39 25:19 54:50
currency	12:9 23:39 25:19 54:50
gaug is	54:20 101:12
is rat	54:17 84:11
dress loss	54:53
be _ a	54:30 64:16 102:9 112:11
be #n	54:11 92:10
be _ mm	50:14 54:9 68:11 73:9
useful==	54:22
useful	54:22
least useful	54:22
useful _ to	54:22
not chang	57:15
perhap==s	123:62
highest==	0:-8 18:10 123:25
perhap	123:62
highest	0:-8 18:10 123:25
lad==s	46:14 57:19 102:17 120:12
lad	46:14 50:8 57:19 102:17 120:11
lad $	50:8 57:19 102:18
here _ ,	14:9 109:9
bench _ ,	1:10
peopl ,	57:15
he may	57:16
he _ only	57:16
urban==	57:11
urban	57:11
person of	61:-11 62:27
shop ,	53:9 57:11
, work	16:-9 25:54 57:10
person _ the	62:15 64:18
of _ shop	37:9 54:10 56:11 60:-8 61:25 111:10
register==	40:20 60:19 97:19 121:16
thing==s	10:8 11:14 33:11 34:22 57:19 82:8 83:11
register	40:20 60:19 97:19 121:16
pleas register	40:20
thing ,	34:9 54:11 82:11
uid _ ,	58:8
, _ only	22:12 119:11
to _ thing	82:12
thing _ so	34:9 54:11 82:11
klara==	57:42
klara	57:42
the user	58:29 59:-10
user with	58:18 59:-10
#c as	58:13
uid _ as	58:13
show up	51:8 58:13
it _ @person	15:10 58:11 63:15
id==	58:20
u==	58:20
id	58:20
u	58:20
@person ,	15:9 28:22 29:16 40:10 51:-13 53:-10 57:-9 58:25 61:-14 62:22 63:13 108:12 109:-9
, note	58:20 104:21 120:11
note that	35:9 52:14 58:20 86:10 96:12 107:25
- _ say	58:20
treat==	58:8 112:36
treat	58:8 112:36
^ treat	58:8 112:27
as @person	58:8
is _ anybody	14:-8 28:24
nobody now	59:22 64:17
ditch==	59:35 80:19
ditch	59:35 80:19
^ ditch	59:35 80:19
the uid	59:21
k==	60:9
k	60:9
k $	60:9
carri==ed	44:10 60:17 74:-10 109:9
carri	44:10 60:17 74:-10 109:9
got carri	60:17
@person _ carri	60:17
got _ and	69:19
her the	60:14
, _ her	62:17
her _ lead	60:14
the _ role	123:15
, window	60:15 63:38
role _ ,	57:8 60:15 63:-8
, _ bench	15:11 60:25 63:36
^ perhap	123:37
should get	123:15
should _ the	85:-9 123:29
him==	15:8 29:-8 57:14 60:18 61:42
let @person	61:22 62:12
, remov	47:11 56:20 61:23 111:17
him	15:8 29:-8 57:14 60:18 61:42
@person _ ,	58:17 61:21 62:22
, _ him	61:33
remov _ from	47:11 61:23 85:19 99:-8
remain==ing	29:15 61:24 116:10 117:-9 123:30
#n _ us	57:11 61:28 117:10
of _ :	61:31 65:16 88:16 120:10
leav==ing	62:-11 109:-8 123:30
stay==ing	61:-8 109:-8 123:30
not leav	61:-8 107:14 109:-8 123:28
not _ ,	1:-9 38:-9 39:10 59:11 61:-9 78:15 100:39 109:-10 118:8 123:24
think==ing	123:31
think about	37:-9 123:57
is _ about	57:10 123:31
return _ to	62:22
to _ shop	62:32
^ un	61:-12 62:30 82:-11 83:28
retirement==	62:62
@person came	62:29
retirement	62:62
@person _ out	62:31
came _ of	62:31
hir==ed	57:11 62:24
reinstat==e	61:-9 62:40
hir	57:11 62:24
reinstat	61:-9 62:40
in again	62:13 94:18
let _ in	57:15 62:13
hand @job	15:23 63:11
- _ over	63:11 77:11
to _ door	60:20
put @person	63:44
belong==s	14:15 58:19 63:9 64:21 77:-8
with @person	30:10 58:12 63:22
belong _ the	14:15 63:14
, _ @person	49:14 63:13 109:9
from here	51:24 63:26 85:8 110:-10
#n _ here	63:26 116:32 117:-8
assign==	63:43
assign	1:22 12:11 15:25 27:-10 30:8 46:-17 63:54 64:37 123:-8
know==s	33:-11 60:12 123:30
know ,	29:14 33:-10 101:10 123:25
grab==s	37:17 64:31
grab	23:8 37:17 41:17 64:31 104:11
for grab	37:18 64:32
up _ grab	37:18 64:32
, anyon	64:19
anyon can	64:19
can have	1:-9 38:12 64:21
off _ ,	16:8 56:15 64:10 66:11 107:39 115:8
time may	27:-9 30:9
may _ it	23:13 37:12
tru to	34:14 64:22 123:-11
assign==ed	1:22 12:11 15:26 27:-10 30:9 46:-17 63:11 64:38
no #n	46:-17 64:58 77:-8
, somebody	64:26 101:12
somebody else	64:26
, _ else	64:26 96:11
work _ number	37:-13 63:22 64:46
total==	65:38
total	10:21 65:38
in total	65:41
, _ count	65:19 76:10
exactly==	49:-11 65:12 67:20
exactly	49:-11 65:12 67:20
exactly #n	49:-8 65:12 67:14
i just	49:-8 65:16 67:10 78:9 122:61
just went	65:17
, _ just	49:-8 65:17 67:10 78:9
i _ went	65:17
gram _ ,	42:12 66:11
altogether ,	62:-8 66:11 99:11 105:12
scale==s	65:-9 66:27
scale	65:-9 66:27
battery==	123:9
could not	0:10 46:11 62:10 90:17 107:10
battery	123:9
to _ #c	68:28 84:8
metr of	68:14
#d gram	66:-8 67:48
weigh _ the	67:18
heavy==	67:9
heavy	67:9
weight==	67:13
weight	67:13
the weight	67:13
weight of	67:13
is what	2:10 5:8 41:-8 67:10
put==s	67:11
guess==	123:10
guess	103:10 123:10
@wire would	0:10 1:-11 123:10
that yet	123:10
of _ would	0:21 1:-11 123:10
is really	1:-8 39:-15 68:43 84:9
misread==	68:10
misread	68:10
mm _ i	68:9 80:9
rule $	68:10
miscount==ed	68:31
say #d	91:10
miscount	68:31
miscount $	68:31
be #c	50:14 68:29
writ==e	1:-10 10:13 24:9 39:17 54:10 68:27 76:22 123:-9
longer than	68:30
writ	1:-10 10:13 24:9 39:17 54:10 68:27 76:22 123:-9
writ down	68:25
mm _ than	68:16 75:-9 91:23
knock==ed	28:30 29:-8 68:18 94:22
knock	28:30 29:-8 68:18 94:22 107:8
i know	68:18 82:11
m _ the	50:9 68:18
off _ @wire	68:18
for _ i	68:18 70:14
know $	11:11 15:8 25:18 26:8 27:10 68:18 109:-9 123:22
say ,	41:-8 78:10 123:20
ther _ be	68:14 111:12 123:20
@wire _ than	123:20
gave me	69:41 123:-9
#n make	0:22
them from	51:21 110:-9
from it	46:12 69:15
: slot	69:32 90:9
went _ fret	69:24 74:12 81:-19
piec _ up	35:-8 69:20 81:-11
and cut	69:10
but the	42:13 78:-17 116:10 123:39
the top	4:10 70:10 72:19 74:-12 96:23 103:11
were cut	70:13
i pull	94:17
out again	3:10 71:13 123:-10
and they'r	109:12
back out	71:26
has it	1:10 15:11
any fret	123:28
from delivery	72:22
)~"
R"~(@job _ its	72:11 76:-8 92:24
its _ from	72:19
#n _ pleas	6:51 72:15
all done	42:15 72:18
stick with	72:27
with delivery	72:27
delivery number	72:25
stick _ delivery	72:27 119:13
with _ number	58:9 72:17 105:27 118:12
i saw	2:-12 4:9 69:9 70:14 73:26 75:8 81:-10
, flat	18:15
deep _ flat	18:15
, _ bottom	18:15
curv at	73:10
the bottom	73:19
slot :	73:10 75:19
sawn==	73:54 75:-11 87:-8
follow==s	18:9
sawn	73:54 75:-11 87:-8
bottom that	73:10
follow	18:9 68:11 74:11 92:14
follow the	18:9 74:12
i measur	38:8 73:10 77:10 79:-8 84:10 87:8 91:8
, _ old	38:-8 77:15
the shift	71:-8 74:22
now sit	71:-8 74:19
, _ now	59:8 62:10 71:-8 74:10 98:29 117:11
#n _ sit	35:12 71:-8 74:18 89:8 91:13
now _ in	71:-8 74:19
sit _ #n	71:-8 74:18 91:14
relaid==	74:10 108:-9
relaid	74:10 108:-9
been _ to	33:11 34:13 49:13 63:17 66:-8 69:13 74:13
mov _ of	74:23 96:-8 123:26
slid==	74:8
down by	88:-10 91:10 97:10 123:27
shift _ to	2:-8 60:13 74:55
move _ fret	2:9
any _ of	26:19 30:17 46:-12 123:26
across _ slot	75:12
caliper on	40:12 75:11
put _ caliper	75:11
fingerboard==	27:10 75:56 86:11
fingerboard	27:10 75:56 86:11
@job fingerboard	75:39
fingerboard is	75:19
: job	3:11 40:-10
how wide	8:26 123:16
got _ ,	120:8
#n _ stop	76:90 107:-12
more _ it	76:13 111:11
ruin _ #n	76:20 90:18
hammer==	27:11 76:33 123:36
it with	71:19 76:32
the hammer	76:33 123:37
hammer $	76:33 123:37
mangl==ed	76:22
writ off	39:23 68:-13 76:22
mangl	76:22
writ _ the	10:14 76:22
anew ,	77:11 101:12
been made	74:-10 77:36
made again	2:10 77:25
has _ made	74:-10 77:36
replacement==	3:-8 77:27
replacement	3:-8 77:27
is made	2:10 3:-8 77:17 84:10
#o _ is	3:-8 77:17 111:10
fret _ made	3:-8 76:10 77:17
over again	16:16 38:-8 77:19
measur _ and	38:-8 71:11 77:9
i think	24:8 123:8
handful ,	78:8
or so	26:10 78:9 123:18
so ,	26:11 78:9
, unmeasur	38:-11 78:34
, _ or	3:13 40:-10 78:9
#n _ so	36:10 51:8 53:-9 72:17 74:-9 78:8 81:17 86:16 95:-10 97:10 110:8
measur ,	78:26
bench _ @wire	6:29 78:11
nobody _ ,	35:13 78:11
roughly==	38:-8 78:11
roughly	38:-8 78:11
unknown==	38:-8 78:23
unknown	38:-8 78:23
tin _ length	71:-10 78:23
have put	78:-18 123:19
full $	78:-17 82:14 83:-8 123:19
i've gone	41:13
here is	41:-8 62:9 78:10
, straight	51:35
is _ handful	41:-8 78:10
now _ ,	56:21 60:10
was a	111:17 122:11
quiet==	33:11 88:11 123:9
somebody bought	123:28
quiet	33:11 88:11 123:9
is quiet	33:12 123:9
somebody _ to	11:-9 29:18 123:28
handful _ it	123:10
it _ quiet	33:12 123:9
box==	0:11 7:30 80:30 86:8
box	0:11 7:45 80:29 119:11
crown are	80:11
piece _ to	74:-8 80:22
scrap==ping	123:26
could do	29:15 123:21
a few	27:9 123:25
could _ with	123:26
hair of	44:10 81:21 94:-15
hair _ #d	81:21
@job _ made	13:14 81:13
s on	81:9 123:13
two==s	81:20
two	81:20
not using	81:-8 85:10 123:17
we'd have	123:11
by all	82:25
by _ that	82:25
whatever==	8:15 82:17 102:13 122:8
whatever	8:15 82:17 102:13 122:8
whatever _ plan	82:17
: _ it	29:15 68:27 82:12
want ,	35:13 82:14
, piece	81:12 82:14
and new	82:20
piece _ new	82:20
the staff	62:27 82:22
whol lot	72:-9 82:13 83:22 120:10
nobody take	82:17
, keep	3:25 39:12
keep it	36:10 69:-10 118:12
for that	31:10 100:11
all hold	23:55 82:-8 83:21
- _ the	2:-11 5:11 73:9 82:-11 83:28 120:12
give _ everyth	82:-10 83:27
oak==	123:24
we'v a	119:10
oak	123:24
neck and	93:10
we'v _ new	119:10
millimetre _ the	91:12
@wire bar	84:8
mm long	0:10 84:14
long _ #n	67:14 84:43
, hollow	84:13
, _ sole	84:12
long and	67:11 81:10 84:40
it _ really	68:10 84:9
#c _ long	84:10
recount==	84:9 122:34
the sole	84:19
recount	2:10 74:9 84:9 122:34
recount to	74:9 84:9
of _ hollow	84:8
- bar	85:8 97:25
mapl==e	85:11
^ register	97:21
register a	40:20 97:21
the name	7:15 53:-10 55:10 57:11 60:19 84:10 97:10 104:9 120:8
name of	53:-9 60:19 97:9 104:9
mapl	85:11
length ,	38:-10 68:10 79:10
by _ name	97:10
length _ #n	119:10
of _ long	69:10 81:-10 84:19
long _ :	84:19 93:11
bar short	85:29
gone for	85:19 99:11
gone _ good	85:19 99:11
bar==s	0:10 2:10 4:17 27:-9 85:21 123:-11
long from	85:20
from _ bar	85:21
of that	35:9
that _ bar	85:13
hollow _ ,	43:8
bar _ nobody	85:13
nobody _ it	22:8 25:10 102:-8
retir the	85:12 116:-10 117:12 120:9
drop -	85:11 99:17 121:14
away ,	1:10 62:11 85:8
name hollow	85:16
the _ name	56:13 85:15 98:24
bar _ hollow	85:16
stubby==	85:24
stubby	85:24
bar can	85:22 86:8
bar _ go	85:22 86:8
using it	21:10 85:11
be _ it	24:8 85:11
, _ bridg	86:10
neck lie	86:21
@job _ lie	86:21
in _ cradl	16:12 86:24 93:-10
measur from	86:8
a _ body	57:10 86:8
on _ measur	86:8
hang==s	86:12
so a	86:25
over it	86:17
so _ bar	86:25
barb on	87:28
our @wire	87:12 117:8
thickness of	87:34
tang _ of	87:23
thickness _ @wire	87:23
twic==e	112:9
twic	112:9
i laid	88:26
straightedg on	88:10
, _ rock	88:10
line ,	121:14
trebl _ ,	88:23
no _ between	88:18
teeter==s	88:15
, feeler	88:10
held _ ,	23:12
, _ goe	93:10
but not	57:15 88:10
, edge	88:17
under _ but	88:10
under _ ,	88:10
, _ held	88:9
look a	88:22
eye==	75:10 78:11 88:44 91:-19
eye	44:9 75:10 78:11 88:43 91:-19 94:-10
by eye	75:10 88:44 91:-19
eye ,	44:9 78:11 88:43 91:-19 94:-10
gap at	88:8 90:17
, _ gap	88:9 89:8
tippy==	88:17
tippy	88:17
side ,	36:12 88:25
did _ of	21:12 88:17
quickly==	29:11
quickly	29:11
the feeler	18:10 40:-13 89:16 91:12
slid _ feeler	89:16
^ under	16:-8 43:10 50:10
fully==	89:10
fully	89:10
the wood	89:29
wood ,	89:18
gap ,	89:33
on _ wood	89:18
daylight==	89:12
^ you	35:13 89:12
you can	3:10 89:16 98:11 101:8
daylight	89:12
you _ see	3:11 89:12
- _ job	92:12
dirt in	0:-12 3:-10 68:9 90:46
old glue	90:18
glue pick	90:9 95:12
^ reckon	1:-15 17:-10 18:34 38:11 50:14 58:8 59:10 63:10 68:13 90:13 91:11 103:17 113:10 123:-10
stand up	90:17
not deep	90:22
reckon _ #n	68:14 90:8 91:13 113:14
slot _ deep	18:9 73:-11 90:10
check #n	90:17 113:11
and could	0:10 90:18
find any	90:18
and _ not	0:10 11:9 29:-8 30:9 44:10 47:10 61:25 62:-16 64:-8 90:17 94:-9 101:9
sit==ting	35:12 89:8 90:15 91:13
tang sit	90:19
sit bottom	90:19
up _ its	90:18
sawdust==	4:-8 18:-8 90:39
sawdust	4:-8 18:-8 90:39
measur with	40:-10 91:12
with _ feeler	40:-10 91:12
feeler $	40:-10 91:12
hundredth==s	91:60
hundredth	91:60
#n hundredth	91:60
the line	11:11 91:47
measur _ hundredth	91:30
lower than	75:-9 91:21
than #n	50:11 75:-8 91:15
, below	91:22
say _ mm	91:10
a #o	91:11 98:24 123:9
of _ millimetr	0:-8 91:22
how low	91:19
on _ :	91:12 115:13
too low	40:-10 91:14
than the	54:11 68:14 91:29
is _ than	50:11 91:17
end at	92:17
noth _ come	5:10 22:-9 92:17
final==	76:-10 92:38
final	76:-10 92:38
final fret	76:-10 92:38
its _ fret	2:10 76:-8 92:24
former==	71:16 92:31
goe up	92:31 93:10
former	71:16 92:31
its very	86:14
tighten==ed	93:16
tighten	93:16
, _ neck	93:17
perfectly==	93:11
perfectly	93:11
is _ flat	93:11
and seat	74:-8 94:16
reseat half	94:10
reseat _ an	94:10
in their	74:-8 94:10
#n reseat	94:32
job _ reseat	94:14
shim==	94:17
gave fret	76:-8 94:16 96:10
gave _ #n	76:-8 94:16 96:10
reseat==	42:20 94:14 123:18
did a	94:19 96:12
reseat of	94:32
job _ had	71:11 94:11
, _ seat	27:12 94:12
reseat==ing	94:35
the clamp	56:16 95:11
glu _ and	95:22
under _ clamp	95:14
put glue	95:22
: #r	51:38 95:28
thin==	94:13 95:11
thin	94:13 95:11
, clamp	95:16
pick _ #n	64:-11 95:12 106:38
in _ end	95:13
itself==	96:13
itself	96:13
top _ #n	96:10
off _ and	17:9 32:13 64:10 96:9
, _ levell	96:25
i levell	96:28
i _ just	0:10 96:18 122:13
ston==ed	96:28
ston	96:28
individually==	96:15
individually	96:15
abrad==ed	96:27
abrad	96:27
it _ level	96:19
levell _ ,	88:-8 96:15
by _ i	75:10 96:9
was _ level	17:-9 96:27
bandsaw==s	97:41 99:20
jig==	97:13 99:37
new thing	97:29
jig	97:13 99:37
crown _ ,	27:38 42:18 97:13
up a	44:10 48:10 87:-10 97:9
wher with	1:10 97:9
set _ a	48:10 87:-10 97:9
an _ of	25:14 97:9
slot saw	4:-8 102:23
a sinc	52:10 56:12
neck _ of	86:16 97:25
as _ today	97:25
as many	97:20 98:17
many as	97:20 98:17
light _ ,	17:11 97:21
as _ want	97:20 98:17
chang -	98:14 120:11
- machin	98:11 99:17
limit ,	13:-11 16:52 17:-8 98:19
#o press	98:24 123:9
arriv ,	98:14 116:18
so we'v	2:8 98:25 119:10
#o _ has	64:17 98:14
)~"
R"~(has _ ,	98:14
, _ we'v	98:25 119:10
minut==e	8:9 32:10 98:13 103:25
make it	64:16 68:25 98:12 103:12 112:13
minut	8:9 32:10 98:13 103:25
#n minut	98:13 103:25
a _ minut	98:13 103:25
the number	14:12 37:-8 58:9 59:16 80:10 98:35 105:26 118:12
number of	14:12 27:13 59:15 97:11 98:35
workplac==e	98:25
workplac	98:25
name _ is	84:10 98:25
take them	99:15 120:8 121:24
them off	99:16 121:11
sander away	99:18
sander _ ,	25:22 100:26 114:16 123:-8
it from	47:11 99:16
done _ with	99:38
away _ the	1:9 80:11 99:37 109:9 121:12
belt==s	100:11
nobody can	100:21
the belt	41:17 100:19
nobody _ use	100:21
kaput==	25:-9 100:75
kaput	25:-9 100:75
usabl==e	100:30 101:32
usabl	100:30 101:32
, its	76:12 84:10 88:11 100:30
press can	100:8 101:13
not _ used	100:22
to _ december	52:23 100:10 109:10 117:12
both sander	100:17 101:13
have _ out	71:15 100:16 118:19
been _ sinc	80:10 100:17
#o sander	101:27 114:16
both _ are	101:14
mend==ed	68:11 101:13
mend	68:11 101:13
be _ again	2:10 101:13
need _ press	102:16
press _ now	25:9 102:13
polish==	42:21 102:10 103:15
plac on	88:10 102:8
take _ on	17:11 102:8 109:35
occupy==es	15:11 102:20
occupy	15:11 102:20
bend is	40:8 103:27
the time	27:12 42:-8 64:13 103:24 105:9 107:12
polish ,	27:24 42:21 103:12
hour ,	14:12 28:-8 103:10
take _ quarter	103:9
an _ ,	34:25 103:20
, make	103:14 112:15 122:8
that _ ,	3:8 63:20 103:14
reserv _ press	53:-9 104:25
@day between	51:-8 100:10 108:10
on _ between	100:10
get _ press	104:10
book it	104:21
inspection==	104:22
inspection	104:22
@job sander	2:9 105:36
sander _ can	101:9 105:35
to seat	106:23 123:14
job _ up	106:38
interrupt the	107:44
the fil	107:24
off at	106:-11 107:18
unfinish==ed	107:58
stop ther	92:11 107:17
unfinish	107:58
unfinish $	107:58
- @day	51:-12 108:19
@person _ :	51:-8 110:18
, hour	28:18
, _ @day	11:9 29:-9 51:-9 109:55 116:10
work hour	28:12
@person _ no	61:15
off _ @day	28:29 29:-11 108:-10 114:10 123:46
on holiday	82:11 109:14
sick==	33:8 39:20 60:-10 82:11 96:11 101:10 109:36
sick	33:8 39:20 60:-10 82:11 96:11 101:10 109:36
not here	109:34 123:-18
@person the	109:12
afternoon of	11:19 109:12
off next	109:11
day _ next	109:19 111:11
recital==	109:12
recital	109:12
^ off	107:39 109:16
, me	109:40
of her	27:8 108:-11 110:12
in till	110:28
till _ ,	23:13 110:17
not a	52:8 89:8 111:14
december _ not	111:14
not _ clos	111:14
a mistak	111:17 122:11
remov it	47:11 56:20 111:17
was _ mistak	111:17 122:11
be open	51:8 53:-9 111:12
, _ december	28:52 53:-16
, _ cancel	111:12
so _ the	0:-10 25:10 46:10 67:9 73:9 99:8 111:11 112:9 114:17 122:8
fall through	52:-10 111:36 118:19
the _ december	53:14 109:17 111:42 116:9 117:-10
no rush	46:14 112:35
until @job	113:34
, other	113:24
lift==	94:22 113:33
lift the	94:22 113:33
will _ at	110:18
of _ off	114:11 115:9
tomorrow _ #t	114:26
yesterday _ order	49:-9 115:9 118:14
, they	69:11 71:21 115:11 118:12 119:18
they say	115:21
, _ say	115:12
it _ next	46:14 114:15 115:12
, promis	115:12 117:18 119:-10
promis in	115:12 117:18 119:-10
arriv==ing	115:11
with ferro	49:-10 115:11 120:29 121:8
a fortnight	10:13 115:11 119:14
an _ with	115:11 122:10
order _ ferro	49:-11 115:19 118:12
ferro _ #n	115:11 120:41
in _ fortnight	115:11 119:14
fortnight $	115:11 119:14
^ lindwurm	32:22 116:30 117:27 118:9 119:-17 120:38 121:16
lindwurm _ #n	49:-11 116:30 120:15
the parcel	116:17
got _ whol	116:13 120:9
the lindwurm	49:22 116:31 117:15 118:-9
lindwurm order	116:9 117:14
order :	115:13 117:16
order number	115:16 117:23
#n should	105:27 117:23 122:10
number _ should	59:8 105:27 117:23
be _ tomorrow	28:25 117:23
late ,	117:8
our _ wire	31:13
wire _ be	97:16 117:8
, _ come	16:20 117:8
lindwurm tang	117:25
lindwurm _ ,	115:8 117:14
wire _ are	11:-9 117:15
the arriv	14:19 117:14
order _ lindwurm	117:-11 118:47
becaus they	94:13 118:19
@wire _ so	33:13 50:10 118:13
withdraw==	47:24 85:8 118:21
withdraw	47:24 85:8 118:21
withdraw the	85:8 118:21
told==	0:-9 26:9 33:9 44:9 46:10 56:17 63:10 65:31 68:9 74:8 101:10 109:8 123:-9
told	0:-9 26:9 33:9 44:9 46:10 56:17 63:10 65:31 68:9 74:8 101:10 109:8 123:-9
ferro we	115:9 121:13
come _ more	55:8 118:12
harbour==	119:16 121:35
harbour	119:16 121:35
harbour metre	119:16 121:35
as _ supplier	119:18 121:10
copper==	121:14
copper	121:14
copper line	121:14
sold in	119:11
at least	119:11 120:14
least #n	119:11 120:14
copper _ ,	121:14
, _ least	119:12
least _ m	119:12
grey==	119:11
heron==	119:11
tool==s	107:14 119:11
grey	119:11
heron	119:11
tool	107:14 119:11
tool on	107:14 119:11
supplier list	119:11
, pack	32:34 119:20 120:-20
tool _ the	107:14 119:11
alley==	119:9
- supplier	120:8 121:12
alley	119:9
, lead	120:21
lead day	120:10
, _ mass	115:9 119:8
week and	22:9
#n kg	119:9 120:12
they _ in	71:22
of _ kg	119:10
fretwir==e	119:16 121:32
fretwir	119:16 121:32
when fretwir	119:16 121:32
to _ :	119:20
sheet==	5:-9 6:65 119:9 120:10
sheet	5:-9 6:65 119:9 120:10
from order	119:10
order to	5:17 119:10
of _ supplier	119:24
our _ ,	98:11 119:10
supplier _ a	119:17 120:-8
door $	52:10 119:10
metre ,	50:8 119:37
i _ us	115:9
found _ a	68:14
us _ new	57:10
a _ supplier	119:15
they _ #n	119:16
a minimum	119:14
with _ minimum	119:14
supplier ferro	120:8 121:24
ferro ,	5:10 22:-10 27:-15 32:27 120:52
ask for	48:10 87:-10 120:11
day _ ,	100:11 119:-12 120:20
kilo==	120:12
only sell	119:11 120:11
quick ,	120:18
quick _ it	120:18
, _ pack	120:18
ferro _ a	120:9 121:14
gone out	61:17 62:-10 121:18
busiest ,	121:18
gone _ of	61:17 62:-10 121:18
them _ the	5:9 13:22 71:17 121:23
delet _ supplier	121:21
the _ ferro	115:9 121:25
plum==	121:25 123:-15
plum	121:25 123:-15
that supplier	121:17
wait ,	107:20 122:15
scratch that	86:32 122:13
scratch _ last	122:16
said==	52:-12 53:10 65:11 111:25 117:10
what i	2:10 41:-8 122:65
said	52:-12 53:10 65:11 111:25 117:10
what _ just	122:52
to report	101:13 122:11
report that	101:13 122:11
that ,	86:32 122:19
should not	25:10 59:9 64:11 122:9
have gone	80:11 122:10
gone _ ,	99:11 122:10
receiver _ ,	55:11
wire .	70:20
. low	50:13
, _ http	55:11
receiver name	56:14
under _ name	120:10
note==s	56:41
, name	14:41
address==	32:12 55:20
event==	55:10
longer ,	37:8 55:10 80:11
address	32:12 55:20
address http	55:19
address _ :	55:19
kitchen==	56:11
you add	20:11
kitchen	56:11
receiver kitchen	56:11
can _ add	20:11
you _ the	7:14 73:-8 102:13 118:10
the _ receiver	56:23
receiver==s	55:8 56:39
the tabl	4:12 56:14
more _ to	56:41 84:10
offic==e	56:20
offic	56:20
receiver _ offic	56:20
offic $	56:20
board _ it	56:16
will take	35:48 123:-20
i _ take	35:48 123:-20
and with	14:14 16:39 85:-18
to _ doe	88:42 123:-25
^ its	86:28 90:24
, on	0:17 9:-8 29:-8 31:19 41:-8 78:10 109:61
#n _ well	41:39 42:51 94:38 112:-8 123:-9
give it	15:10 39:11 63:15 75:10
^ they'r	100:10 117:42
that _ to	117:32
, _ press	100:38 101:9
me #n	104:9 110:8
well ,	35:12 41:39 47:10 94:42 98:10
it has	49:13 57:10 66:-8 86:13 93:24
and if	30:10
load stock	16:10
the _ stock	16:10 50:20
stock _ mm	16:10
, _ then	0:-10 123:17
then $	0:-10 27:9 123:20
bar #n	0:10 85:-9 123:14
we never	121:10 123:32
never _ anyth	123:32
glu _ on	119:14 123:32
order _ now	9:19 117:-12 120:20
a _ @job	27:-13 123:51
won==	33:-8 123:36
match==	33:-8 72:38 74:-17 110:11 123:36
won	33:-8 123:36
match	0:18 33:-11 72:38 74:-17 110:11 123:36
the match	33:-8 72:19 74:-8 123:36
coffe==e	29:-11 106:9 123:70
coffe	29:-11 106:9 123:70
glass==es	123:40
glass	123:40
joke==	34:-8 123:69
joke	34:-8 123:69
joke $	34:-8 123:69
@person be	28:47 109:-10 123:-14
be off	28:33 109:-26 123:22
, shelf	105:8 109:-8 123:22
@person _ be	28:-9 29:-8 60:21 109:-11 110:8 123:23
, _ let	54:13 57:9 60:9 102:10 109:-9 123:20
let _ know	28:18 109:-9 123:20
agre==ed	109:-8 123:11
@person want	105:17 109:-8
agre	28:8 109:-8 123:11
to _ off	28:8 109:-10 123:11
, could	6:9 123:11
is early	42:-33 123:73
is _ done	42:-34 123:71
when i've	4:13 123:24
i've finish	4:13 123:24
when _ finish	4:13 123:24
not make	0:11 112:-12 123:16
do _ make	112:-12 123:16
if #n	88:-11 123:25
whether _ is	18:19 89:-11 123:17
i'd rather	4:9 123:23
)~"
R"~(could _ be	30:-12 123:40
fret were	17:-17 33:48 44:10 96:-9
bar wide	85:-13 123:39
that @wire	8:36 19:20 31:19
faster==	123:10
faster	123:10
to say	103:-8 123:34
cut _ take	103:-8 123:34
sell==	32:20 117:8 119:10
did ferro	19:28 33:-13
last time	19:29 33:-13
chang _ time	19:29 33:-13 54:11
doe undo	34:45
the reminder	33:-10 109:15 123:41
the radius	123:34
let me	16:8 28:21 31:9 37:-9 123:20
me _ about	37:-9 123:25
@job phon	13:-22 47:10 123:67
or _ i	3:10 32:14 123:16
fix==	123:18
task==	52:-9 54:18 111:-10 123:25
task	52:-9 54:18 111:-10 123:25
the littl	0:8 2:10 4:18 7:14 27:-8 39:16 123:-10
bit in	0:8 7:16
of _ littl	0:19 2:10 123:-10
the _ bit	0:9 7:16 81:11
for line	0:9
is about	0:9 8:9 16:9
for _ number	0:10
that _ about	0:10 16:9
@wire staff	0:10 5:10
of thos	0:21 3:-9 56:12 96:14
thos littl	0:10 21:12
littl bar	0:10 2:10 4:18 27:-8 123:-10
make _ of	0:10 2:10 123:-10
#n _ thos	0:10 56:12
groov==e	3:13 4:26 33:9 40:11 74:9 88:-15 90:9 95:10
groov	3:13 4:26 33:9 40:11 74:9 88:-15 90:9 95:10
#o groov	0:10 3:20 33:10 76:9
groov of	0:10 3:19 33:10 76:9 95:10
of some	0:11
the _ groov	0:10 3:20 33:10 76:9
groov _ job	0:11 33:10
up by	0:17 68:14
, long	0:13 1:11
long one	0:14
tin bit	0:63 2:10 22:-15 38:-12
lunch ,	59:10
just tell	17:12
me which	1:8 17:12
just _ me	17:12
tell _ which	1:8 17:12
@job _ so	2:10 35:12 63:30 107:-8
when _ am	28:12
could _ make	0:11
it _ so	0:10 17:-8 28:10 36:9 64:11 69:-10 86:8 92:11 96:12 99:10 105:13 109:-8
, _ which	1:21 11:16 13:16 27:19
so _ of	0:11 58:14 97:-8
know it	0:8 44:10 94:-9
a wast	0:8
wast ,	0:8
know _ is	0:8 28:21
anyway==	9:8 51:8
^ as	1:-12 17:23 18:8 22:9 23:12 28:10 29:-12 34:13 54:22 73:-12 99:10 100:9 102:-9
as i've	0:10 1:-9 28:12 34:17
anyway	9:8 51:8
anyway ,	9:8 51:8
would _ me	0:12 1:-10
give _ a	0:9 1:-10 13:18 50:9 75:10
wee==	0:-8 12:8 13:9 15:8 23:20 26:18 36:-8 40:15 48:8 66:10 69:9 75:8 87:8 88:-10 91:10 95:8 97:9 103:10 123:-10
wee	0:-8 12:8 13:9 15:8 23:20 26:18 36:-8 40:15 48:8 66:10 69:9 75:8 87:8 88:-10 91:10 95:8 97:9 103:10 123:-10
wee bit	3:12 8:9 91:12
would ther	1:10
ever a	26:19
g'day==	0:10
that'll==	0:10
g'day	0:10
in ther	0:8 8:10 34:13
that'll	0:10
y'all==	1:-12 3:8 5:14 8:8 9:-12 11:12 15:11 16:13 26:8 27:15 29:-11 34:11 38:11 43:8 77:9 99:11 101:13 110:15 118:12
y'all	1:-12 3:8 5:14 8:8 9:-12 11:12 15:11 16:13 26:8 27:15 29:-11 34:11 38:11 43:8 77:9 99:11 101:13 110:15 118:12
what y'all	0:11 5:16
y'all got	0:10 8:13 26:10
in that	0:11
that tin	0:11
in number	0:9 3:24
y'all _ in	0:11 34:13
that _ that	0:11 52:11
a wee	3:12 8:9 48:8 75:9 87:9 88:-9 89:8 91:10 95:10 97:10 103:10 123:-8
you ,	13:9 112:20
would _ ,	10:8 13:10
you _ what	13:10
job number	6:13 13:19 26:8 36:16
fret number	17:15 89:11
what from	0:19 5:29 8:-8 19:-8
the box	0:21 7:15
box of	0:22
can _ make	0:21 7:15
match==es	0:18
^ to	0:17 5:11 10:11 15:27 55:8 56:18 119:16
@job _ which	0:17 17:20
@job _ also	2:24
advis==e	15:24 29:16
item==	1:21 23:16 33:37
suitabl==e	18:22
mr==	13:19 28:14 108:-8
advis	15:24 29:14 58:10 100:12
pleas advis	15:24
advis which	15:24
item	1:20 11:39 23:15 33:33 80:11
suitabl	18:22
suitabl for	18:10
mr	13:19 28:14 108:-8
mr @job	13:19
pleas _ which	15:24
record==s	0:20
remnant==	0:20
allocat==ed	0:20
position==	0:15 3:15 16:8 40:-8
record :	0:20 3:11 40:-10
: which	0:23
remnant	0:20
allocat	0:20
position #n	0:15 3:16 4:9 40:-8
job no	0:20 15:18
for _ record	0:19 40:11 67:9
position _ of	0:19 3:16 40:-8
job _ .	0:18 15:16 35:13 41:11 44:8 47:-9 64:12 74:23 92:16 107:39 123:-9
kindly==	1:-8 2:11 11:29 17:12 28:16 33:21 38:-12 39:13 45:-9 53:-10 56:11 59:14 60:12 61:13 79:10 105:33 116:-8 122:31 123:-10
availabl==e	0:13 34:31 100:8
exceed==ing	0:13
kindly	1:-8 2:11 11:29 17:12 28:16 33:21 38:-12 39:13 45:-9 53:-10 56:11 59:14 60:12 61:13 79:10 105:33 116:-8 122:31 123:-10
^ kindly	1:-8 2:21 11:30 17:12 28:16 33:21 38:-12 39:13 45:-9 53:-10 56:11 59:14 60:17 79:10 105:33 116:-8 120:8 122:31 123:-10
availabl	0:13 34:31 100:8
exceed	0:13
kindly _ the	0:12 2:22 29:14 37:15 38:-10 45:-9 53:-9 56:12 59:19 60:18 79:10 84:8 104:8 120:10
list _ availabl	0:13 34:31
the _ leftover	0:13 69:10 81:-10
, _ thos	0:9 14:12 28:-8 31:9
exist==ing	2:10 65:16
resum :	65:13
exist	2:10 26:16 65:16 99:12 120:9
ask _ we	28:9
we _ buy	119:11 121:10
come _ #n	49:20 92:11 115:15 116:-16
identify==	0:14 8:-18 22:28
produc==ed	0:14 70:11
identify	0:14 8:-18 22:28
pleas identify	0:14 8:-18 22:28
stock in	0:14 8:-18 22:28
produc	0:14 70:11
be produc	0:15 2:10
which _ #n	0:15
@wire _ be	0:15 9:-8 32:31
i've _ this	4:13
guitar==s	8:-11 9:17 11:11 12:27
i suppos	29:15
suppos to	29:15
any of	9:9 64:13
guitar	8:-11 9:17 11:11 12:27
am _ suppos	29:15
piec with	39:15 69:10
on it	1:12 15:26 17:-8 27:9 33:10 49:13 76:9 95:10 106:13
would wast	1:15
wast the	1:15
least of	1:15
is _ piec	23:13
wast _ least	1:15
too shall	41:14
shall ,	41:14
round ,	25:12 28:10
could it	1:21 38:-10
#n _ shall	110:24
shall _ it	41:14
whereabout==s	0:-11 1:63 4:8 49:-13
whereabout	0:-11 1:63 4:8 49:-13
and whereabout	0:-10 1:20
whereabout on	1:19
, _ whereabout	0:-10 1:20
goe wher	1:17 2:11
, _ wher	1:31 16:17 29:8 38:-10
, whereabout	1:43 49:-13
whereabout $	0:-10 1:44 49:-13
sweep==ing	1:10 38:-10
found this	1:10 38:-10 73:9
sweep	1:10 38:-10
was never	1:10 38:-10 96:13
bench _ i	1:10 38:-10 76:10
could _ go	1:10 16:10 38:-10
you'r==e	1:8 112:20
^ whil	1:8 20:8 33:10
you'r	1:8 112:20
^ now	1:10 32:12
now that	1:10 32:12
on that	0:-8 1:9 3:9 63:20
now _ @job	1:10 17:11
though==	24:8
though	24:8
i _ i'd	8:8
which i	0:-9 18:10
bit _ ,	91:13
ye==	11:13 25:20
ye	11:13 25:20
would ye	11:13 25:20
it _ best	1:11
be _ off	17:12 39:23 68:-13 99:16
mil==	1:10 23:-8 40:18 68:16 75:9 87:10
mil	1:10 23:-8 40:18 68:16 75:9 87:10
#d mil	1:10 75:10 87:10
job it	1:11 43:8
here _ what	1:10
oughta==	1:9 11:17 50:14 63:15
someplac==e	1:9
i reckon	1:9 40:19
reckon piec	68:14
oughta	1:9 11:17 50:14 63:15
someplac	1:9
go _ ,	1:9
whereabout _ the	1:9 4:8
be a	0:-10 1:10
the piec	1:16 23:10 36:22 37:9 39:9 68:15 69:26
in which	7:16 13:20 27:20 28:-11 108:11
reminder of	21:10 109:15
it belong	64:8
finish ,	1:10 31:9 106:9
employ==ed	1:10 35:13 85:12
employ	1:10 35:13 85:12
be employ	1:10 85:12
plac _ it	1:10
employ $	1:10
indicat==e	1:23
indicat	1:23
to which	1:22 23:12
item #n	1:22 23:16 33:37
tin should	1:22 22:10
which _ order	1:23 32:17
tin _ be	1:22 22:10
assign $	1:23 15:27
view==	57:13
view	57:13
to _ wast	5:11 39:16 80:9
and which	13:10 14:25 25:11
plac _ and	52:10
bar i	2:10 16:-8 43:10 123:-10
move _ all	2:10 123:-14
all _ so	2:8 123:-10
so _ do	2:10 121:10 123:-11
hardly==	2:10 50:11
i push	2:10
hardly	2:10 50:11
cut again	2:19
do _ push	2:10
push _ fret	2:10
and they	40:13 44:9 115:15 119:11
they are	71:11 112:16
#n _ they	69:11 118:12
they _ #d	40:13
them _ so	5:-12 70:8 80:10 82:10
by _ or	26:11
so _ and	120:13
and _ bit	82:8
groove==s	13:21 18:16 69:8 70:14 73:9 106:12
lie on	4:8
groove	13:21 18:16 69:8 70:14 73:9 106:12
the groove	18:17 42:8 69:10 73:9 81:-10 106:13
noth in	13:22
in them	13:22
can get	119:11
new _ and	58:14 97:-8
noth _ them	13:22
plan ,	2:18
shift _ ,	2:14 96:13
which i'd	29:15
be laid	17:12
them are	25:12
i _ anyth	13:14 29:10
, _ i'd	29:15
be _ so	2:17
over and	17:8
and said	117:10
so what	4:12 10:9 16:10 22:8 26:9 32:9 33:28
the best	2:29 74:-8
best way	2:17
way to	2:17 31:34
them along	74:8
is _ best	2:17
the _ way	2:17
best _ to	2:17
to _ them	19:11 32:10
a minut	32:10
minut ,	32:10
never had	34:17
, _ piece	41:-8 78:10
tak _ of	41:10 45:-8
never _ #n	92:10
how would	16:15 43:-11
so ther	5:12 92:10 98:12
how'd==	2:11 16:16 20:10
em==	2:11 78:11 94:10
^ them	73:10
how'd	2:11 16:16 20:10
em	2:11 78:11 94:10
' em	2:11 78:11 94:10
em down	2:11
so we	2:11 67:11
the most	2:11 24:13 54:10
them _ on	73:10 74:8
' _ down	2:11
most $	2:11 24:13
help==s	2:10
along on	74:8
job _ using	2:10
plac so	2:9
only a	27:9
we _ move	2:8 46:16
a _ few	2:9
wee _ to	2:8 15:10 27:11
to _ again	2:8 114:11
newly==	74:-10 77:28 94:11
newly	74:-10 77:28 94:11
@job i	2:10 70:14 93:11
)~"
R"~(i with	2:10 54:20 109:34
with to	2:10 54:20 109:34
- _ i	2:10 93:11
measur ;	74:-8 79:8
them the	2:12 74:-8
how _ #n	2:22 5:15 16:-12 74:-8
let==s	2:10
help of	2:10
sander _ with	2:10
, _ help	2:10
rearrangement==	2:21
minimise==s	2:21
remake==s	2:21
pleas promis	2:20 12:15 27:11 30:-9 33:29 34:26
rearrangement	2:21
minimise	2:21
remake	2:21
redistribution==	2:24
consider==ing	2:24
unfill==ed	2:24
kindly promis	2:24 17:17
redistribution	2:24
, also	2:24 14:12 28:-8 31:9
consider	2:24 22:12 50:10
unfill	2:24
recount==ed	2:10 74:9
as _ have	2:9 22:10 50:10
made for	3:10 76:9 84:11
#n _ made	3:10 44:14 69:-12 81:23
bad==	3:21
bad	3:21
groov _ the	3:19 4:27
only _ long	3:21 5:10
spac==e	3:11
and you	3:11
spac	3:11
edge ,	3:11
so will	3:10 18:10 123:-10
again _ i	3:10 117:8 123:-10
not _ so	3:10 25:10 111:9 123:-13
so _ a	3:10 97:16 123:-11
will _ fret	1:-8 3:10 39:14 123:-10
@job _ do	3:10 15:10 33:14 123:-11
the gap	90:27
#n do	113:14
#n _ gram	43:8
, y'all	3:8 11:17 43:11 77:11
y'all think	3:9 30:8
good _ for	3:9 19:22 117:9
, _ think	3:9 122:9
bit _ at	3:13
sufficient==	3:11
sufficient	3:11
sufficient ,	3:11
or must	3:23
must it	3:11 18:11
, _ must	3:11
; is	3:14 18:10
with _ millimetre	3:14
millimetre _ is	3:11
, hav	3:15 42:15
, stay	3:16 24:21
hav _ ,	3:16 61:15 121:10
permit==ted	57:13
a length	40:34
: is	29:15
permit	57:13
length _ #d	3:-12 40:34 71:15
toleranc==e	3:17 40:-8
toleranc	3:17 40:-8
confirm==	3:11 42:16
confirm	3:11 42:14 92:25
pleas _ whether	3:12 18:19
confirm _ the	3:11 92:25
quality==	3:13 40:-10
quality	3:13 40:-10
measur at	3:12 40:-14 75:10
@job .	3:8 42:20 72:-11 83:49 112:17
the _ .	3:9
. _ that	3:8 99:14 122:15
that _ wher	35:10
wher _ sit	3:9 4:8
do all	4:18 27:-8
all _ littl	4:18 21:12 27:-8
line==s	4:10
not know	4:10
they want	4:10 19:9
a list	4:27 12:23
every _ on	4:27
so could	4:11
out _ board	4:11 37:10
so _ you	4:11 38:12
rather _ befor	4:9
saw _ what	4:10
tang and	117:10
to know	11:9 13:15 29:13
so how	8:9 13:11 34:13
tea==	4:13
tea	4:13
i _ be	4:13 24:8 110:11 111:-10
will _ cut	4:13
cut _ so	4:13 122:9
gimm==e	4:8
rundown==	4:8
ya==	4:8
gimm	4:8
rundown	4:8
ya	4:8
wher they	44:10
@job _ would	13:9 26:11
, _ they	69:-15 74:28 115:8 117:8 121:10
depend==s	4:21
depend	4:21
specification==	4:22
pleas send	4:21 11:15 26:18
send me	4:21 26:18
specification	4:22
pleas _ me	4:20 8:25 13:17 26:17
require==s	4:10 102:10
require	4:10 102:10
, position	4:10 16:10
position _ through	4:10
through _ ,	4:10
for _ file	4:10 16:17
file $	4:10 16:17
record for	0:-11 4:18 17:16 57:13
saw from	70:14
up and	101:14
not allow	23:23
allow to	23:23 60:8
make for	5:11
make _ @job	112:9
what _ all	5:11 27:20
bit ,	5:10 22:31 82:8
from them	5:8 81:11 120:12
alon ,	5:33 13:-8
@wire _ off	5:57 115:8
from _ piec	5:9 35:-12 37:20 69:28
together ,	5:23
that take	5:8 27:9
when _ look	5:8 44:10
take _ least	5:8 120:14
which _ like	29:15
for _ out	27:14
next to	5:12 91:11
outta==	5:17
outta	5:17
and no	5:10
go with	16:10
@wire _ mate	8:14
divid==e	5:15
smallest==	5:15 120:21
quantity==	5:14 23:11 120:9
divid	5:32 69:17 96:-10
smallest	5:15 120:21
the smallest	5:15 120:21
quantity	5:14 23:11 120:9
wire _ that	5:15 31:14
new _ is	5:15
separat==ed	5:22
separat	5:22
@job of	5:22 13:13 35:12 45:11 46:9 64:11 81:12
sourc==e	6:11 72:14
@job instrument	11:14
sourc	6:11 72:14
material _ for	82:13 83:-8
for _ instrument	11:14
present==	5:22 29:-13
present	5:22 29:-13
new stock	2:-10 5:12 70:18
, kindly	2:-10 5:12 61:15 121:10
divid==ed	5:17 69:17 96:-10
consum==e	5:17
consum	5:17 35:13
as littl	5:16 120:12
as _ new	5:17
paper==	6:25 48:-10 86:8 87:10
paper	6:25 7:16 48:-10 86:8 87:10
the paper	6:16 48:-10 87:10
with _ to	6:16 53:-9 104:9 108:10
tell==s	6:11
the sheet	6:11
make every	51:8
turn _ ,	6:9 101:10
so let	54:14 60:11 102:10
all _ i	33:11
so _ me	8:8 29:11
her ,	59:12
with _ mark	6:10
give us	50:9
like a	82:9 93:10
a good	50:9 82:8
us _ cut	6:9
should $	12:9 33:10
i would	13:17 15:10 19:10 27:8 48:9 54:17 84:12 123:-8
i _ like	13:17 19:10 27:8 36:10 54:18 123:-13
requir==e	14:19 27:14
requir	14:19 27:14
i requir	14:19
may _ have	11:12 14:11 19:16
for _ order	117:10
order _ @job	47:11
box==es	7:15 119:11
box in	7:15
for _ box	7:15
box _ the	7:15
tag==s	7:16
compartment==s	7:16
tag	7:16
compartment	7:16
name _ for	7:16 26:15
paper==s	7:16
box _ #n	7:16 119:11
bin _ label	7:19
and _ off	28:15
so _ i	27:8 34:9 122:9
warn ,	109:9
to _ bin	39:12
would _ ever	105:9
how _ about	8:9
#n mil	40:19
mil _ the	40:19
rang==e	7:10
rang	7:10
, _ bin	7:10 47:14
of _ millimetre	7:10
a _ set	103:19
for _ stag	27:13
left and	65:10
@wire _ and	19:27 20:12
left _ how	8:19
and _ many	8:13 9:-9
left ,	8:11
many $	8:20 11:21 25:25 29:-11
ring==s	8:8 112:9
the phon	8:8 10:10 46:10 107:14
again _ so	8:8
so _ much	8:10
wire _ ther	8:8
and _ both	29:15
both $	29:15
so tell	8:8 29:11
@wire ther	8:9
my _ are	8:9 65:15
it look	17:10
coil _ ,	67:11
me _ so	38:12 54:14
plac at	8:8 14:25 25:-9
in _ plac	14:24 25:12
plac _ all	8:8 14:25 25:-9
^ whatever	8:15
whatever we	8:15
whatever _ got	8:15
in _ way	8:15 93:10
mate $	1:-9 8:10 12:13 14:-8 19:17 23:14 24:12 28:12 29:-13 30:13 31:17 33:8 34:17 46:-13 60:12 68:14 104:10 109:22 115:8
^ y'all	8:13 26:9 29:-8 30:8 57:8 99:12 110:15 118:13
got any	8:13
ther _ wee	8:9
we pass	8:15 98:12
stor==e	8:23
us in	8:20
stor	8:23
what _ wire	8:23
are exist	65:16
current==	8:24 12:-8 13:17 14:12 20:16
inventory==	8:24 52:15 65:24
figure==s	8:25
pleas give	8:25 13:16 25:14 82:-9 83:13
current	8:24 12:-8 13:17 14:12 20:16
the current	8:24 13:18 20:16
inventory	8:24 52:15 65:24
figure	8:25
the _ inventory	8:24 52:15 65:24
what quantity	23:11
quantity of	23:11
quantity _ @wire	23:11
insuranc==e	8:11
content==s	8:11
insuranc	8:11
content	8:11
@wire going	9:9 38:12
last us	9:15
the _ going	9:8 17:11 25:13 29:21
for how	8:-14 9:25 19:20
for _ many	8:-12 9:25 11:22 29:-10
gone and	41:13
last==s	9:25 97:14
@wire _ last	9:24 20:14
, _ until	104:8
so _ when	11:11
ferro _ ,	9:8 121:10
much _ it	9:8
such==	12:28
such	12:28
so when	28:16 29:12 109:-9
so _ doe	13:13 28:8 34:14
run _ ,	10:10
reckon $	9:16 23:-8 29:16 40:19
get==ting	13:21 50:11 69:10 100:10 109:9
through ,	110:12 111:-11
and _ should	17:10
we _ get	119:11
the wee	3:-10 13:18 15:9 23:24 40:16 66:10 69:10 93:8
us ,	19:10 48:8 57:11 61:8 74:8 119:13
wee _ of	66:11
us _ and	29:8
suffice==s	9:16
suffice	9:16
sort ,	11:11 29:-8
must #n	10:12
coverag==e	9:26
express==ed	9:26
coverag	9:26
express	9:26
by which	9:14 33:13
in what	9:14 32:8
be reorder	9:14 98:15
which _ and	9:12 12:27
and _ what	9:13 18:10 19:9
to _ reorder	9:14 98:15
and from	10:22
which shop	32:11
from _ shop	19:9
and _ will	1:-8 39:14 43:15 67:11 115:14
cost _ together	10:14
order==ing	10:11
day and	14:10 80:10
phon in	10:10 56:12
already ,	10:10
order and	10:10
already _ so	10:10
and _ whom	10:20 29:11 33:25
bank==	10:10 42:13
bank	10:10 42:13
the bank	10:10 42:13
on _ order	10:12 13:19 115:18 116:-8
as i	13:10 22:10 50:11
as _ am	50:11
it _ what	16:9
, _ who	10:11 28:32
gonna==	29:9 82:11 100:9 110:15 118:13
gonna	29:9 82:11 100:9 110:15 118:13
what _ that	16:8
like $	10:14
the thing	10:9 56:17 83:11
thing to	10:9 84:10
like ,	10:9
of _ thing	10:9
issu==e	10:21
purchas==e	10:21 115:8
total==s	10:21
price==s	10:21 19:16
issu	10:21
purchas	10:21 19:10 115:8
with supplier	10:21 19:21
price	10:21 19:16
csv==	10:14
account==s	10:14
csv	10:14
account	10:14 20:17 39:23 119:9
they were	44:9 94:12 96:11
one _ to	91:11
again _ they	71:11
becaus _ were	94:13
down _ ,	117:8
which guitar	11:11 12:27
guitar and	11:11 12:27
i _ what	82:12
mean _ is	15:8 29:-8
the many	11:22 29:-10 30:11
home ,	47:12
my _ want	28:8
know _ i	29:14
home _ so	47:12
dentist==	109:12
be at	28:-8 29:11 110:17
dentist	109:12
the dentist	109:12
at _ dentist	109:12
customer==s	11:13 12:18
to customer	11:16
befor _ take	16:10
patient==	11:11
and she	11:11 29:-8 57:10 60:8 62:16
patient	11:11
silver _ the	11:11
she _ the	11:11 62:17
by _ is	11:10 26:12
is get	50:11 100:11 109:9
it _ get	100:11
)~"
R"~(like _ know	13:17 27:8 29:14
morrow==	11:12 28:25
all due	11:16
morrow	11:12 28:25
the morrow	11:12 28:25
ye know	11:13 25:20
, _ ye	11:13 25:20
would _ know	11:12 25:18 26:8
call due	11:22
we _ call	50:14
@day _ mate	28:15 109:24
behind that	11:17 92:10
we oughta	11:17 50:14
been done	11:17 33:11
we _ been	11:17 117:10
been _ with	11:17 33:11 43:10 74:-9
y'all $	11:17 43:11
become==s	29:23
become	29:23
day _ it	11:17 46:10
summary==	11:16
summary	11:16
promis to	11:13 60:8
item==s	11:39 80:14
kindly report	11:39 21:10
kindly _ all	11:39 17:16
job that	12:9
look after	44:14
that _ has	27:20 60:8
kettl==e	29:11
kettl	29:11
the kettl	29:11
kettl _ ,	29:11
so _ job	47:12
notify==	36:13 100:10 110:18
holiday==s	109:18
notify	36:13 100:10 110:18
book at	12:15 26:19
on _ book	12:16
door _ ,	12:19 60:13
bench _ mate	12:14 60:13
poor==	12:9 33:10 108:10
to her	12:9 64:10 109:9
her name	12:8 57:10 60:9
name ,	12:10 57:11
poor	12:9 33:10 108:10
the poor	12:9 33:10
name _ the	12:10 105:9
, _ poor	12:9 33:10
open at	12:10 51:11
which are	25:13 28:-9 32:10
are they	25:13 28:-9 32:10
which _ they	25:13 28:-9 32:10
they _ the	69:11
the colleagu	12:15 26:8
colleagu @person	12:15 26:8
for _ has	12:15 31:10
has _ colleagu	12:15 26:8
, earliest	12:18 30:31
promis _ list	12:16 34:30
earliest _ date	12:18 30:9
ms==	12:11 15:27 27:-10 29:22 33:10
assign to	12:11 27:-9 30:9 63:11
ms	12:11 15:27 27:-10 29:22 33:10
to ms	12:11 27:-9 30:9
ms @person	12:11 27:-9 29:22 33:11
assign _ ms	12:11 27:-9 30:9
bench _ pleas	99:11 102:-8
pleas _ for	114:20
status $	13:77 25:14 61:14
@job _ what	13:36 16:19
certainly==	13:14
certainly	13:14
ask ,	1:-8 13:13 29:12 39:14
his #n	0:-9 13:13 18:10 47:8
his _ -	0:-9 13:13 18:10 47:8
hear==	13:14 25:10
hear	13:14 25:10
are with	13:14
fill==	13:10
me in	13:10 107:14 109:12
done and	13:10 27:10 33:12
as _ was	13:10
was _ for	0:-13 13:10 33:13 35:12 37:12 62:11
wee @job	0:-8 11:-8 13:12 15:9 23:21 26:20 69:10 93:8
is _ wee	13:20 15:10 88:-8 89:8 97:10
report on	13:18 33:13
summaris==e	13:29 17:41
outstand==ing	13:30 17:14 31:13
summaris	13:29 17:41
outstand	13:30 17:14 31:13
#n _ work	13:30
all _ peopl	28:31
bass==	60:8
name==s	14:41
staff ,	14:41
keep miss	14:10
so who	28:9
up _ so	14:10 16:12
so _ work	28:9
the retir	62:24
retir one	14:21 61:9
peopl _ the	14:14 28:-8
, _ retir	14:19 62:14
retir _ as	62:16
workshop==	14:21 25:13 51:11 52:17 62:24
workshop	14:21 25:13 51:11 52:17 62:24
the workshop	14:8 25:14 51:11 52:17 61:10
me _ all	14:15 31:9 34:10
all _ to	14:16 52:11
to _ workshop	14:15 61:-8 62:25
workshop $	14:15 61:-8 62:25
work _ ,	51:21 60:12 101:12 110:-10
that'v==e	14:9
that'v	14:9
occupi==ed	14:14
which person	14:14 33:13
occupi	14:14
workshop ,	25:13
with _ role	14:14
also thos	14:12 28:-8 31:9
person ,	14:12 28:-8 64:18
thos _ are	14:12 28:-8 31:9
personnel==	14:30
role==s	14:30
personnel	14:30
with _ and	14:29 19:20 66:10 95:13 115:14 121:8
show==ing	14:12
employee==s	14:19
employee	14:19
string ,	15:8
@job _ who	15:27
unless==	15:11
unless	15:11
somebody has	15:10
it already	15:10 106:14
, _ somebody	15:11 67:11
somebody _ it	15:11 101:12
it _ :	15:11 29:15
phone==s	15:8
phone	15:8
will ,	15:8 29:-8 43:15
put him	15:8 57:11 61:10
through to	15:8
for his	15:8 23:13 26:11
, _ he	15:8 110:8
i _ him	15:8
his _ ,	15:8
do y'all	9:-8 15:11 27:17
job _ do	15:11 113:14
hand _ it	15:16
himself==	15:11 85:8
himself	15:11 85:8
himself with	15:11 85:8
on which	15:10 28:18
responsibl==e	15:20 63:22
responsibl	15:20 63:22
whom _ the	9:-9 15:27 23:12 26:10 31:-9 32:30
member==	15:24 59:11 61:15
member	15:24 59:11 61:15
member of	15:24 59:11 61:15
of staff	15:24 29:17 59:11 82:11
member _ staff	15:24 59:11
staff _ @job	15:24 82:11
pass _ #n	16:19
sleeve==s	16:12
and my	16:12 48:-10 87:10
sleeve	16:12
although==	16:10 43:-10
although	16:10 43:-10
^ although	16:10 43:-10
already _ the	16:10 17:11 43:-10 46:10
be _ with	16:10 43:-10
, becaus	16:9 75:10 90:11
, _ happen	16:8 33:39
group==s	16:10
insid==e	16:10
press off	16:10 99:9
off me	16:10
me see	16:10 31:9
see all	16:10 31:9
the group	16:10
insid	16:10
let _ see	16:10 31:9
for _ as	16:9 23:-8 29:15
befor $	16:10 42:17 44:-8 114:12
nobody ever	51:8
it #d	68:40
make _ #d	68:26
across _ crown	48:8
^ how'd	16:16 20:10
direction==	16:8
direction	16:8
that _ job	16:8 74:9 113:21
the full	11:-8 16:17 33:33
n==	16:12
n	16:12
instruction==s	26:-11 34:35
instruction	26:-11 34:35
the instruction	26:-11 34:35
instruction for	26:-11 34:35
appli==ed	16:10 95:14
appli	16:10 95:14
the side	23:21
the thin	88:11
too high	17:10 96:15
i've been	34:14 63:19
call @person	17:8 58:18
and look	17:8 106:15
a floor	17:8 34:9 67:8
floor ,	76:13 100:12
i _ @person	17:8 28:21 62:10
@person _ and	17:8 40:11
, _ tell	17:11 29:11
leav _ the	17:8
, _ about	17:8
odd==	17:10
it up	17:10 64:10
odd	17:10 38:-9 78:26
so is	17:10 23:8 25:10
#o _ so	17:10 113:11
so _ fret	17:10 74:8
#n _ mate	23:25
as next	17:12 23:-8 29:9
next ,	17:12 23:-8 29:20
finding==s	17:43
finding	17:43
record _ the	17:17 40:11
@job or	18:24
of _ or	18:13
@job _ will	18:11 72:10 92:11
groove on	106:13
groove _ the	106:13
properly==	18:11
properly	18:11
wire _ it	18:11 119:11
i hammer	3:-10 76:17
understand==	0:-8 18:10
understand	0:-8 18:10
someth _ ,	0:-9 18:10 27:8 37:10
can _ ,	0:-9 18:10 107:20
time ,	21:12 27:37 52:9 53:11 64:12
deep in	73:8
middl ,	18:10 48:10 73:-10 87:-10
in _ middl	73:8 93:11 107:11
had the	18:10 23:8 61:10
millimetr wide	18:10
i've _ had	18:10 34:17
a _ wide	18:10
so _ @wire	18:10 68:14
brass'll==	18:36
brass'll	18:36
that _ hold	18:36 30:11
@job wee	26:22
them slot	2:-10 42:-8 73:9 107:13
what _ say	1:-9 68:34
them _ are	101:14
and to	18:11 23:12
appropriat==e	18:18
appropriat	18:18
verify==	18:19
compatibl==e	18:19
verify	18:19
compatibl	18:19
specifi==ed	18:10
apply==es	18:10
specifi	18:10
apply	18:10 111:11
apply $	18:10 111:11
suitability==	18:8
suitability	18:8
get wire	119:11
did _ want	19:9 122:11
lot ,	19:33
wonder	66:8 117:8
ther were	65:9 81:17 95:-8
how high	19:17
the _ match	72:19 74:-8
hand on	63:20
each time	120:14
@wire we'v	66:11
as _ never	34:14
of _ we'v	66:11
delivery _ wire	19:20
we _ ,	32:16 68:14
who _ us	32:37
been _ and	76:10
were the	19:10
every _ of	19:11 66:11
of _ which	19:10 67:11
come _ us	19:11 57:10
like _ see	19:10 26:8
good==s	19:22 119:9
pleas list	19:19 23:37 31:13
good receiv	19:22
list _ good	19:22 99:13
audit==	19:10 33:52
purchas==ed	19:10
audit	19:10 33:52
the audit	19:10 33:52
: from	4:-9 19:10 69:-10 74:20
last month	20:20
whol year	20:31 21:-12
we _ and	20:14 25:15
, _ this	20:17 94:11
, _ november	20:41
answer==	34:23
namely==	38:-9 79:10
someth about	33:14
answer	34:23
namely	38:-9 79:10
, namely	38:-9 79:10
@person _ me	34:9 65:11
for _ month	20:12
whil i	20:8 42:13
glue ,	20:8
of october	20:20
last of	20:8
#o _ october	20:14
than we	68:14
think ,	122:9
this year	21:17
a _ we	99:11 102:-8
we _ using	21:10
think _ so	122:9
gone this	20:11 109:12
month ,	20:17 62:11
out==s	20:15
year ,	20:10 52:15
the _ balanc	20:10
repair==ed	101:12
october ,	21:9
repair	101:24
in _ month	8:-8 21:10
coming==s	20:14 21:-10
going==s	20:14 21:-10
coming	20:14 21:-10
that _ by	20:14 21:-10 75:10
produc the	70:11
reconciliation==	20:21
reconciliation	20:21
current year	20:20 21:8
for _ current	20:20 21:8
account==	20:17 39:23 119:9
the person	20:17 61:17 62:-10
#n october	20:17 33:10
new _ did	8:-9 21:16
becaus _ the	52:11
sav ,	21:41 39:12
time _ so	73:9
save _ this	21:15
auld==	21:9
auld	21:9
put _ with	71:20
save in	21:22
quantify==	21:8
attributabl==e	21:8 90:17
quantify	21:8
the saving	20:-11 21:21
attributabl	21:8 90:17
attributabl to	21:8 90:17
resum _ @wire	21:12 65:13
and _ sinc	21:11
annual==	20:-10 21:13 52:15
reclaim==ed	20:-10 21:13
annual	20:-10 21:13 52:15
the annual	20:-10 21:13 52:15
report ,	20:-10 21:13 122:9
reclaim	20:-10 21:13
nobody will	1:-8 22:12 39:14
staff _ the	22:12
nobody _ ever	1:-8 22:12 39:14
is been	22:8 33:12
lying in	22:9 74:8
and nobody	1:-8 22:8 39:14 80:10
touch it	22:9 100:17
)~"
R"~(been _ in	22:9
junk==	22:45 38:-9
junk	22:45 38:-9
bit _ #n	22:31 36:10
will _ clos	22:9 52:15
more _ so	22:9 39:10 47:10 85:10
van==	22:10 49:8 117:8
van	22:10 49:8 117:8
of ,	22:10 121:13
or too	22:13
minute _ the	22:10 103:11
not touch	100:17
wee _ in	3:-10 40:16
consider==ed	22:12 50:10
in our	22:12 59:9
be consider	22:12 50:10
for clean	22:11 27:14
for somebody	23:52
somebody $	23:31
for anyon	23:10 37:12
#n _ kept	23:9 36:11
, whos	15:12 23:28
grab==	23:10 104:12
i grab	23:10 104:12
grab the	23:10 104:12
the wrong	23:10 59:12
wrong #n	23:10 122:8
being _ ,	23:10
finger==s	23:8
finger	23:8
now _ so	23:8 34:14 74:8 121:10
so _ that	23:8 47:14 82:10 102:19 111:9
@job _ put	23:13 71:20
that _ been	83:19
@wire _ got	8:-8 23:21 66:11
for _ wee	23:22 26:20
whom is	23:13 26:11
somebody ,	23:21 57:12
me pleas	23:21 122:34
forc==e	23:42
all reservation	23:41 83:28
forc	23:42
material==s	23:42 82:13 83:-9
earmark==ed	23:44
earmark	23:44
behalf==	23:13
behalf	23:13
you _ it	32:10 33:14 44:10 94:-9 122:12
you have	24:13 27:20 33:14 120:14
to push	24:14 84:10
you _ to	24:14 27:20 120:14
so _ stay	24:14
remember==	24:10 33:13 58:18 123:-8
remember	24:10 33:13 58:18 123:-8
we writ	24:10 68:14
writ _ down	24:10 54:10
that _ a	38:12
imagin==ing	24:8
whenever it	24:8 50:13
imagin	24:8
it _ i	24:8 71:11 91:11
that _ be	24:8
on us	29:8
sprung back	17:-11 24:31
frequently==	24:9
arrang==ed	24:9
frequently	24:9
arrang	24:9 114:20
onward==	24:10
remain==s	24:10 52:19 62:17
onward	24:10
remain the	24:10 62:17
it happen	122:9
happen ,	33:26
reorder as	24:11 98:15
were _ as	24:11
statistic==s	24:11
seat ,	24:11 103:17
to our	24:11 61:-8 62:25
statistic	24:11
the stand	25:22 100:9 102:14
anybody _ at	25:9 102:8
grind==ing	25:10
grind	25:10
that should	25:10
visitor==s	25:12 28:9
visitor	25:12 28:9
the _ round	25:12 103:11
banjax==ed	25:13 85:8
banjax	25:13 85:8
them sander	25:11 101:14
sander we	25:14 98:12 105:14
on them	42:-8 107:13
the now	66:11
function==	25:14 34:17
they and	14:-8 25:13 32:11
they all	25:14 44:10
function	14:-8 25:14 34:48
of _ workshop	25:14
function $	14:-8 25:14 34:48
somebody _ the	25:13 119:11
and its	25:14 77:9
our _ and	25:14 61:17 62:-10
operational==	25:23 101:20
operational	25:23 101:20
any machin	26:8
machin book	26:13
@job _ any	47:10
on _ machin	58:14 97:-8
booking ,	26:15 105:10
mine ,	12:29 26:13
for noth	3:-10 76:17
noth ,	67:11
forget ,	43:15
i told	26:10 33:10 46:11
told @job	26:11 46:11
if somebody	27:9
week _ mate	29:15
com ,	26:14 118:10
you know	26:14 35:13 44:10 94:-9 101:10
machine for	26:10 99:11
book ,	26:10 32:12 41:10 45:-8 68:17
exist==	26:17 99:12 120:9
what time	26:8 28:26
time book	26:8 112:9
at _ time	29:13
in _ name	26:19 53:-9 104:9
calendar==	26:25 34:-8
calendar	26:25 34:-8
may _ see	26:14 34:27
to _ through	27:32
the seat	27:12 107:11
completely==	27:20 106:-12 107:18 113:38
completely	27:20 106:-12 107:18 113:38
a _ new	27:20 70:14
stage ,	27:42
, _ board	92:17
^ refret	27:11 30:21
refret _ ,	27:27 30:-11
i've never	34:17
sensibl==e	27:8
sensibl	27:8
i _ tell	112:20 118:10
it _ how	27:8
, _ stage	27:11
involv==e	27:15
involv	27:15
futur==e	9:-8 27:17 68:16
futur	9:-8 27:17 68:16
for bend	9:-8 27:17 97:16
partial==	30:13 116:10
partial	30:13 116:10
a partial	30:13 116:10
partial work	27:9
are to	27:10 80:14 82:14 83:-8
for _ partial	30:13
a _ work	27:9 45:10
partial _ of	30:13 116:10
are _ be	27:10 80:14 82:14 83:-8
new fingerboard	27:10
of _ new	27:11
a _ fingerboard	27:10
fingerboard _ #n	27:10
standard==	27:13 103:16
standard	27:13 103:16
the standard	27:13 103:16
duration==	27:21 103:34
round==ing	27:21 102:9 103:17
duration	27:35 103:34
duration of	27:21 103:34
of round	27:21 103:18
round the	27:20 42:13 102:8 103:17
the _ duration	27:22 103:15
duration _ round	27:21 103:18
round _ corner	27:20 42:13 102:8 103:17
apply==	111:11
partial refret	27:-9 30:9
duration==s	27:14
with expect	27:14 31:13
who _ be	28:25 57:13
take _ so	28:8 107:20
so _ are	28:8 74:8
if @person	28:10 30:15
not in	28:9 54:18 109:14 112:16 123:-11
she work	28:10
when _ she	29:9
agre==e	28:8
fetch==	28:11 46:11
children==	28:12
fetch	28:11 46:11
children	28:12
on and	28:15 106:15
and knock	28:15 94:22
knock off	28:15 107:9
is _ workshop	28:8 51:11
workshop _ ,	28:10 61:10
com _ ,	28:13 117:10
are _ this	28:8 29:13
payroll==	28:11
payroll	28:11
need _ hour	28:11 103:11
be doing	29:20
i _ doing	29:19 32:12
, machine	29:31
date ,	29:63 46:30
on _ so	29:11 60:11
enough ,	29:13 90:12
ask _ and	1:-8 29:13 39:14
and _ enough	29:13 42:10
so _ will	29:13 51:8 53:-8 92:10 110:12 111:-11
has _ noth	29:25
she _ to	29:10 57:12
gonna be	29:16 100:10
be free	29:16 59:15
be _ @day	29:15 44:-8 110:11 114:29 115:9
when _ each	29:18
, _ make	29:11 112:9
it ready	29:23 98:11
time _ @person	29:15 108:11
capacity==	29:17
utilisation==	29:17
capacity	29:17
utilisation	29:17
start _ for	29:17 106:15
the _ remain	29:17 52:19
, _ .	38:9 42:21 78:25
chang ,	117:10
board new	70:14
he'll==	30:11
he'll	30:11
get it	30:11 32:11 98:11
earliest $	30:32
refret _ glu	30:21
day i	54:21
is bound	36:10 69:-10
, sinc	20:-9 33:11
doe _ ,	30:10
all have	33:11
befor _ week	30:8 117:11
hope==	30:17 46:-12
hope	30:17 46:-12
fingerboard of	86:14
the _ who	30:10 64:18 119:10
quit==e	27:-9 30:19
an additionally	30:10
commit==	30:10
commit	30:10
commit to	30:10
#n _ .	36:22 42:17 45:-10 54:20 65:14 73:20 77:12 106:37 123:-8
. _ is	35:16
not _ what	30:9
time _ i	27:-9 30:9 52:11
the _ com	31:16 53:9
the one	31:9 43:10 70:14 81:-8 91:11
pleas _ our	31:13 115:8
it at	32:11
them in	32:10 71:17
they take	32:10 119:11
lindwurm _ and	32:8 117:22 120:12
believ==e	48:-10 87:10
believ	48:-10 87:10
alway _ #n	108:11
and _ never	92:10
the address	32:12 55:8
now _ i	32:12 40:-8 42:11 77:11
mob==	32:13
mob	32:13
@wire off	32:13 115:9
the _ lindwurm	117:12 120:17
lindwurm _ in	32:8 116:10
punctual==	32:17
punctual	32:17
hour _ which	28:-12 32:17 108:11
of lindwurm	32:10 117:-9 120:9
and _ lead	32:10
to it	91:11
forgotten==	33:15
forgotten	33:15
do _ ,	33:14 63:10 64:11 118:12 122:9
happen $	33:37 122:8
notic==ed	33:9 38:12
sick ,	33:8 39:20
notic	33:9 38:12
told you	33:13
i _ right	33:14
so _ have	33:14
she _ on	62:10
me _ has	33:12 109:10
ther _ all	33:14
with _ job	33:26
have _ made	33:9 81:12 96:12
activity==	33:33
activity	33:33
trash==	33:52
trash	33:52
entir==e	33:12
entir	33:12
document==	33:37
transaction==	33:37
concern==ing	33:37 47:11
document	33:37
transaction	33:37
concern	33:37 47:11
somebody _ a	98:11
sort==s	34:23
told me	34:9 44:10 63:11 101:10 109:9
you could	34:10 58:-10 59:12
sort of	34:23
of thing	34:23
floor of	34:10 67:9
myself ,	34:10
sort _ thing	34:23
, _ befor	34:10 44:-8 114:13
befor ,	34:17 62:11
never _ to	34:17 96:13
@quoted	26:-11 34:94
the @quoted	34:37
goe ,	34:19
used $	34:22 81:16
explanation==	34:26
need an	34:26 103:10
explanation	34:26
i _ an	34:26 103:10
function==s	34:31
guidanc==e	34:18
guidanc	34:18
lack==ing	4:-11 13:58
lack	4:-11 13:58
pack ,	32:34
lindwurm _ pack	32:34
. job	36:20 70:10 74:-8 95:11 96:11
piec _ .	36:21 39:12 70:-8
. _ #n	36:20 38:-9 70:10 74:-8 78:26 95:10 96:10 112:19
lonely==	35:12
lonely	35:12
is just	35:12 120:13
is wher	35:12
@wire nobody	35:13
, well	35:13 98:11
of _ nobody	35:13
made _ #o	35:13
i went	35:9
record that	35:12 42:-10 61:15 95:13 106:17
that piec	0:-10 35:26
kindly _ that	35:13
consum==ed	35:13
pleas note	17:-8 35:9 52:14 60:8 86:10 94:10 96:10 107:25 109:15
pleas _ that	17:-8 35:8 42:-12 52:13 58:17 61:14 86:9 95:13 96:12 106:13 107:24
the bit	36:10 37:11 82:13
call #n	36:10 72:18 74:-8
so nobody	36:10 82:10 85:8 100:9
grab it	36:10 41:17
, _ nobody	1:-8 36:10 39:11 100:9
else _ it	36:10 112:13
pleas put	36:12 54:23
. @job	36:22 47:24 82:40
beauty==	36:10 69:-10
beauty	36:10 69:-10
and somebody	36:10 67:11 69:-10
so keep	36:10 69:-10 82:11
a _ and	36:10 51:8 53:-8 60:12 69:-10
, _ keep	36:10 51:21 69:-10 82:22 110:-9
so _ it	17:-9 36:14 37:9 39:12 47:9 63:11 69:-10 76:9 99:8
@person _ her	56:13
her _ on	46:11
^ mind	104:12
)~"
R"~(pleas to	36:10 39:9 45:10 82:15 97:13 101:12 121:12 122:33
to reserv	36:11 82:15
piec _ pleas	35:-9 36:16 37:17
pleas _ reserv	36:11 82:15
hour the	36:12 53:10 100:11
by me	36:12 106:12
be reserv	36:10 82:14 83:-8
to _ reserv	36:10 82:14 83:-8
further==	36:13 100:10
retir for	36:13 62:11
further	36:13 100:10
until further	36:13 100:10
further notify	36:13 100:10
to _ retir	36:13 61:10
retir _ the	36:13 77:10
until _ notify	36:13 100:10
notify $	36:13 100:10
be sav	37:13
. nobody	64:19
turn==s	37:10 101:10
^ turn	37:10 83:19
so give	37:9 105:12 114:15
good _ ,	37:9
worry==es	37:18
worry	37:18
it _ up	37:18 90:10 93:10
for _ again	37:18
pleas take	37:20 59:8 71:14 121:12
upon==	37:14 93:11 113:20
hereby==	37:14 63:11 83:29 111:18 117:-8 118:21 122:25
effectiv==e	37:14
upon	37:14 93:11 113:20
hereby	37:14 63:11 83:29 111:18 117:-8 118:21 122:25
is hereby	37:14 63:11 111:18 117:-8 118:21 122:25
hereby lift	37:14 83:30
effectiv	37:14
the _ plac	37:14 52:11 88:10
#n _ hereby	37:14 63:11 83:29 117:-8 118:21
drop it	38:9 99:30
littl _ of	38:8
now in	4:-9 38:9 69:-11 74:30 81:-9
, _ round	38:8 87:9
@wire .	38:17 39:-8 50:12 80:19
. #d	38:18 41:11 73:20 74:-8
so here	38:12 41:-9 78:10
it _ no	38:12 113:21
, _ here	38:12 41:-9 78:10
you _ ,	1:-8 38:12 101:11
me with	38:12 106:11
going _ the	38:12 82:8
y'all can	1:-9 38:11 99:12 118:13
reckon _ can	1:-9 38:12 105:8
drawer _ now	1:-9 38:12 41:10 45:-8
have _ yesterday	16:-8 43:9 49:22 69:17 96:-10 116:-10 118:12
pleas enter	38:12 71:-10 108:10
kindly add	97:12
item of	80:14
item _ @wire	80:14
accident==	39:11
accident	39:11
it doe	39:10 41:14
not go	39:11
rubbish==	39:16 40:-8 77:11
rubbish	39:16 40:-8 77:11
the rubbish	39:16 40:-8 77:11
piec _ number	39:15 69:10
in _ rubbish	39:16 40:-8 77:11
rubbish $	39:16 40:-8 77:11
so out	39:12 80:10
i @day	1:-8 39:14
not ask	1:-8 39:14
anyth _ it	1:-8 39:14
banjax ,	85:8
ai==	39:19 42:-8 64:10 85:9 107:12 108:14 118:12 123:-10
that old	39:20
ai	39:19 42:-8 64:10 85:9 107:12 108:14 118:12 123:-10
ai not	39:19 42:-8 64:10 85:9 107:12 108:14 118:12 123:-10
a sick	39:20 96:11 101:10
therefor==e	39:16
therefor	39:16
remov from	39:12 71:14 121:16
tin the	39:12 71:14
remov _ the	39:12 121:16
#n _ give	39:12 82:-8 83:14
correction==	39:23 68:-13
on account	39:23
account of	39:23
correction	39:23 68:-13
writ _ on	39:23 68:-13
dispos==e	39:18 80:11
discard==ed	39:18 80:14
dispos	39:18 80:11
dispos of	39:18 80:11
discard	39:18 80:14
i held	40:13
caliper _ the	40:13
groov #n	40:18 74:10 88:-8
measur it	40:10 77:11
#n _ groov	40:18
finally==	40:11 57:12
finally	40:11 57:12
i finally	40:11
finally got	40:11
the good	40:11 88:13
finally _ the	40:11
dot==	40:19
dot	40:19
#d _ so	3:-11 40:16
the record	40:11 67:9
found to	40:11
#n _ found	40:11 73:9
it _ only	41:14 50:11 56:11
short .	41:11
live==s	41:10 45:-8
so fret	41:10 45:-8
live	41:10 45:-8
grab==bed	41:17
shy==	41:17
and now	41:17 62:11
shy	41:17
and made	41:13 81:9
i've _ and	41:13
@job _ wee	41:13 91:13
^ well	47:12 122:9
becom==e	81:17 83:13 95:-8
becom	81:17 83:13 95:-8
them out	2:-9 42:11 74:8
out _ @job	42:11 71:9
, _ am	42:10 59:12 112:20
the _ clean	42:10 76:17
coffee==s	42:13
took me	42:13
all morn	42:12 104:32
coffee	42:13
that stag	42:13 102:9
with them	42:12
hallelujah==	42:20
am all	42:19 59:12
hallelujah	42:20
terminat==ed	42:33
terminat	42:33
has _ to	42:19 47:27 57:10 123:-10
and _ be	42:20 76:10
commenc==ed	106:39
this is	42:15 58:18
confirm that	42:14 92:25
commenc	106:39
this _ to	42:15 73:9
that _ was	42:16 95:14
squash==ed	43:16
squash	43:16
being press	43:15 98:15
one from	43:11 81:-8
#n _ push	43:11
#c _ .	49:24
bar .	84:18
pig==	64:14 77:-8
pig	64:14 77:-8
a pig	64:14 77:-8
, gram	43:8 81:8
was too	43:8
fret _ through	43:11 89:8
newton==	43:11 74:-9
newton	43:11 54:14 74:-9
yesterday the	16:-8 43:10 77:27
#n _ plac	43:13
stay==ed	44:20
me and	44:10 109:12
number _ came	44:10
eye==s	44:10 94:-9
and would	44:10 94:-9 101:10
would not	44:10 94:-9 101:10
not you	44:10 94:-9 101:10
would _ you	44:10 94:-9 101:10
not _ know	44:10 94:-9 101:10
is _ as	114:12
devil==	108:10
devil	108:10
, _ wee	48:8
come up	44:14
fret _ until	44:11 88:12 114:10
was carri	44:10 74:-10 96:9
carri out	44:10 74:-10 96:9
were found	44:10 73:9
was _ out	44:10 74:-10 94:11 96:8
reinspection==	114:20
^ upon	93:11
reinspection	114:20
reinspection of	114:20
fret _ was	40:-9 91:10
#c long	49:22 67:10
bridg ,	86:10
nut and	45:19
it _ #c	49:9 66:10
#n wide	84:22
new #n	40:-8 77:23
new _ .	70:19 84:19 97:13 119:15
so put	57:9 63:11 68:13 102:9
here _ a	41:-8 78:10 119:14
reckon we	50:14 105:8
accept==	45:10
accept	45:10
: _ of	45:10 120:16
kindly _ a	97:11 119:9
the replacement	77:10
replacement of	77:10
on _ phon	46:11
the lad	46:14 120:12
, _ dec	46:31 52:15
dec $	46:31 115:13
wed==ding	110:12 111:-10
wed	110:12 111:-10
, less	117:12
so _ @job	64:21
we must	46:15 113:11
henceforth==	46:9 50:20
#n shall	63:10 64:16 112:12
henceforth	46:9 50:20
job _ shall	63:10 64:16 112:12
shall _ carry	46:9 99:10
so take	47:10 99:9 111:9
, _ take	47:10 59:14 99:8 111:8 120:9 121:12
@job _ .	47:23 76:52 90:25 91:28 107:-12 112:-9
stuck==	95:8 99:16
so job	64:14 77:-8
stuck	95:8 99:16
be stuck	99:16
stuck _ the	99:16
and @job	47:12
it home	47:12 94:22
right _ and	47:12
mate _ so	47:13 86:8
annull==ed	47:11 105:28 118:12
annull	47:11 105:28 118:12
is annull	47:11 118:13
client==	47:27 123:-10
client	47:27 123:-10
not _ be	47:27 100:11 123:-11
request==	47:24
request	47:24
the round	87:9
round top	87:9
top is	87:9
got _ new	58:14 97:-8
round _ is	87:9
top _ #d	87:9
, _ call	118:12
middl==ing	48:10 87:-10
so set	48:8 57:9 87:-10
day _ so	48:10 87:-10 112:9
a _ name	48:15 87:-10
pup==	48:8
pup	48:8
for us	48:8 119:14
wee #d	48:8 87:9
call _ in	48:8 60:23
in _ book	48:8 68:15
name _ now	119:10
larg==e	75:18
larg	75:18
of _ shall	59:13
shall _ with	63:10
with _ name	55:8 84:9 119:11
, _ nickel	48:19
with _ tang	48:9
thickness _ #d	48:9 87:10
depth $	48:15
designat==ed	48:10 85:12
heritag==e	48:10
designat	48:10 85:12
heritag	48:10
a _ designat	48:10
designat _ ,	48:10
scal with	49:12
spool and	49:8
spool _ it	49:12
and _ say	49:12 66:-11
in .	49:8 116:10
gatepost==	49:8
lindwurm van	49:8 117:8
gatepost	49:8
but we	49:8
land==ed	49:16 116:22
micrometer==	48:-19 49:14 87:28
land	49:16 116:22
@wire land	49:16
micrometer	48:-19 49:14 87:28
the micrometer	49:14
land ,	116:24
#c mil	68:16
, _ they'r	81:17 95:-8
gram==	49:10 66:-12 115:8 119:17
it _ been	49:13 66:-8 86:14
@wire _ wire	49:10 66:-9 115:8
, begin	49:22 116:-9
to no	49:22 64:14 77:-8 116:-9
pric _ #d	116:10
less than	50:11
less _ #n	50:11
at _ metre	50:23
so count	76:10
count it	76:10
it as	76:10
going _ that	111:11
count _ as	76:10
zither==s	50:11
zither	50:11
as far	50:11
far as	50:11
i _ cancell	50:11 118:14
shout==	50:9
lad==	50:9
shout	50:9
the _ drop	50:9
wire _ has	50:10 87:10
be _ as	50:8 76:10 98:13 101:19
order again	50:18 101:10
again be	50:18 103:18
order _ be	50:17
threshold==	50:10
pleas set	50:9 103:16
threshold	50:10
be #d	50:20 73:9
minimum _ of	50:20
a @day	51:24 53:-15
so make	112:9
from half	53:-8 108:10
half #n	51:14 104:13 108:10
@day _ half	108:10
half _ to	108:10
half _ ,	51:8
will $	51:8 53:-8
folk==s	111:12
folk	111:12
, folk	111:12
until _ o'clock	51:11 104:8 108:11
open==ed	51:10
regular==	108:15
regular	108:15
shall be	42:-8 51:9 52:14 57:13 60:23 64:16 100:9 112:11 113:17
be #t	51:9 110:24
shut @day	52:59 111:14
xma==s	52:15
jan==	52:15
xma	52:15
jan	52:15
so @day	52:10
to _ gig	52:10
be shut	111:16
and not	52:10 53:8 54:18 107:16 123:-11
whol _ ,	52:11 62:11
#o december	52:13 53:14 109:18 116:9 117:-9
owing==	52:15 80:11 117:-8 118:21
owing	52:15 80:11 117:-8 118:21
owing to	52:15 80:11 117:-8 118:21
note _ the	52:14 86:10 107:26
they said	53:11 111:9
said we	52:-11 53:11 111:16
so on	53:9 73:9
me _ ,	101:10 110:8
will open	53:21
overtim==e	53:9
overtim	53:9
, this	53:9 96:12
for _ shop	53:8 54:10
exceptionally==	110:40
exceptionally	110:40
december _ ,	53:12 111:12
and _ hour	53:14 100:11
)~"
R"~(we _ hold	83:19
writ that	54:11
that down	54:10 102:8
ever _ ,	54:10 111:12
program==	54:18 60:23 97:15 123:-9
program	54:18 60:23 97:15 123:-9
the program	54:18 60:23 97:15 123:-9
hour _ set	54:20
@person new	54:11
old _ ,	54:11
think==s	54:14
newton==s	54:14
load in	54:14 74:12
in _ but	54:13 57:14 116:10
and _ that	116:9
dublin==	54:11
dublin	54:11
new==s	101:14 117:10
being ,	42:-8 107:13
name is	57:10 84:9
, _ name	57:22 84:9
http==s	55:12
exampl==e	55:12
bench .	99:14
exampl	55:12
. exampl	55:12
exampl /	55:12
poke==s	56:13
her phon	56:13
poke	56:13
so _ receiver	56:13
you ever	105:9
that _ kitchen	56:11
porch==	56:18
porch	56:18
beacon==	55:16
beacon	55:16
the _ beacon	55:8 56:8
name _ and	55:8 57:12
the _ http	55:9
webhook==	56:21
webhook	56:21
and _ .	81:8 95:11
must not	56:17 113:11
remov that	99:14
that receiver	56:11
message==s	56:12
message	56:12
annoy==ing	56:11
annoy	56:11
plug==	56:18
plug	56:18
to delet	56:8 121:13
pleas _ delet	56:8 121:13
delet $	56:8 121:13
shall _ be	56:21 103:18 110:24
discontinu==e	56:14
discontinu	56:14 107:26
juri==	57:10
juri	57:10
and he	57:9 58:14 97:-8
he work	57:10 110:8
katja==	57:15
katja	57:15
anyth ,	57:15 117:8
here _ not	57:15
minka==	57:12
minka	57:12
she going	57:11 60:9
and _ going	57:11 60:9
so _ him	57:14 60:10 61:9
join==ing	57:12
down as	57:11 61:8 63:11
as #n	57:11 98:14
him _ as	57:11 61:10
loretta==	57:9
loretta	57:9
her up	57:9
meant _ ,	57:9
, _ our	57:9
so _ her	57:8 60:11
is name	57:10 97:15
about ,	57:10
bench and	76:10
user number	58:16 59:16
user _ #c	58:27 59:16
ignac==	57:13
ignac	57:13
, _ shall	57:13 99:10
computer==	58:17 59:12 68:17 82:10
call==s	58:18
computer	58:17 59:12 68:17 82:10
the computer	58:17 59:12 68:17 82:10
laptop==	58:14 97:-8
laptop	58:14 97:-8
, _ user	58:13 59:12 97:-8
belong _ @person	58:19 64:11
associat==e	58:13
system==	58:13
associat	58:13
system	58:13
advis==ed	58:10 100:12
identification==	58:10
pertain==s	58:10
be advis	58:10 100:12
advis that	58:10 100:12
identification	58:10
pertain	58:10 76:10
pertain to	58:10 76:10
be _ that	58:10 100:12
advis _ the	58:10 100:12
, forget	52:-9 59:14 111:15 122:9
forget it	59:14 122:9
our shop	59:9 61:17 62:-10
not _ anybody	59:9 102:10
shop _ ,	59:9
now _ pleas	59:9 83:13 123:-8
pleas _ it	59:9 99:12 102:-8 105:9
part ,	87:12
got _ for	66:11
thumb==s	59:12
i tru	59:12 122:11
thumb	59:12
is _ her	59:12
unhitch==	58:-10 59:12
unhitch	58:-10 59:12
uid _ from	58:-11 59:16
of user	59:35
from its	59:15
must _ free	59:15 83:13
from _ person	59:19
valid==	111:10
valid	111:10
not valid	111:10
valid anymor	111:10
person _ it	62:11
is _ valid	111:10
not _ anymor	99:12 111:10 120:9
revok==e	59:19 111:11 122:34
assignment==	59:20
revok	59:19 111:11 122:34
kindly revok	59:19 122:34
revok the	59:20 111:11
assignment	59:20
association==	59:13
association	59:13
a member	59:13 61:15
@person _ his	106:16
watch==ing	60:12
@person been	60:11
watch	60:12
than i	60:12
do _ so	60:12
level ,	60:11 96:9
, _ she	60:10 61:8 105:17
inset==	60:23 100:10
inset	60:23 100:10
in _ program	60:23 97:15
transfer==red	60:8
transfer	60:8
tomislav==	60:19
agenda the	60:19 98:12
tomislav	60:19
the register	60:19 121:16
name _ @person	53:-9 60:19 104:9
register $	60:19
good and	61:9
shop _ good	61:9
speech==es	61:10
officially==	61:10
pensioner==	61:10
speech	61:10
officially	61:10
pensioner	61:10
so she	61:9
after _ the	61:9 120:10
altogether _ so	105:12
her _ as	61:9 64:10
definitively==	61:10 92:25
definitively	61:10 92:25
come _ again	61:17 62:-10 71:11
pleas record	42:-10 61:15 72:13 77:9 92:9 95:13 106:17 115:9
record _ @person	42:-10 61:15 106:17 108:10
employment==	61:15
employment	61:15
hav end	61:15 121:10
end _ kindly	61:15 121:10
us again	62:19
retir ,	61:-9 62:18
work _ us	62:9
retirement _ @person	62:27
so _ back	62:10 105:12
was retir	62:11 77:10 101:13
she has	62:9 109:9
thank	67:11
, _ be	115:9
return==ed	61:-8 62:25 64:27 123:-9
return to	61:-8 62:25 64:27 123:-9
, _ again	62:11 114:12
previously==	62:16
previously	62:16
revers==e	62:17 122:10
revers	62:17 122:10
and _ remain	62:17 116:9 117:-8
it _ as	63:11
doing to	63:20
so _ am	63:19 106:9 107:11 109:12
boyo==	63:20
boyo	63:20
reckon the	63:15
responsibility==	63:10
responsibility	63:10
rest with	63:10 69:17 96:-10
particular==	64:22 77:-8
particular	64:22 77:-8
in particular	64:22 77:-8
hour _ it	64:10
yous==e	64:14
yous	64:14
time _ it	64:31
^ ai	64:10 100:9
general==	64:27 123:-8
general	64:27 123:-8
and each	65:10 98:12
metr long	65:9 67:14
win==	65:11
were #n	65:11 81:17 95:-8
i said	52:-9 65:11 111:16
win	65:11
went and	117:12
amount==s	65:11
yesterday in	65:11
physical==	65:24
yield==ed	65:24
physical	65:24
yield	65:24
every stick	66:10 116:24
with ,	66:11 84:10 113:22
wonder==	66:8 117:8
lie now	4:-9 66:8 69:-10 74:20
now the	66:8 117:21
establish==ed	90:20 91:18
establish	90:20 91:18
was establish	91:18
i _ weigh	67:11
powder==	67:9
powder	67:9
thank==	67:11
so _ can	67:11 100:9
near==	67:9 107:9
near	67:9 107:9
a mass	78:11
mass of	78:11
shov==e	68:14
place==s	68:14 97:14
shov	68:14
place	68:14 97:14
by #c	68:14 119:18
spec==s	68:9
jaw==s	68:9
spec	68:9
jaw	68:9
in _ list	121:10
believe==s	68:17
believe	68:17
clerical==	68:10
clerical	68:10
follow==ing	68:11 74:12
remeasurement==	68:11
remeasurement	68:11
groove #n	69:9 70:14
number _ i	69:27 81:-11 96:-10
groove _ ,	69:9
leav on	109:35
on _ wee	69:10 93:9
did ,	35:-8 69:9 98:11
that slot	76:17
apportion==ed	69:13
apportion	69:13
for groove	70:14 81:11
saw _ a	70:14 73:9
from _ board	70:14
decent==	70:8
decent	70:8
to ,	101:10
so they	74:8 115:9 121:10
wire i	70:11
yesterday _ slot	70:18
measur them	71:10
not _ them	71:10
them _ they	71:10 94:13
fret i	71:11 76:10
. _ of	116:11
monster==s	71:11
monster	71:11
that _ #d	71:8 81:11
yank==ed	71:20
yank	71:20
from _ delivery	72:12
top==s	72:19 74:-8 96:14 103:11
match $	72:19 74:-8 110:11
differ==	72:10
differ	72:10
will you	72:10 113:22
so _ with	72:9 80:10
record _ #n	72:14 92:14
determin==ed	72:10
exclusively==	72:10
determin	72:10
was determin	72:10
exclusively	72:10
saw them	2:-10 73:21
, _ saw	2:-10 73:21
. _ by	73:20 84:20
mil deep	87:10
cut _ wee	103:11
a width	75:10
and have	80:12 114:14
width _ #d	75:11
and _ now	74:10 81:-8
the _ told	74:8 101:11
told _ ,	74:8
along _ the	74:8
@job _ them	74:8 81:11
them _ of	42:-8 74:8 107:13
displac==ed	4:-9 69:-10 74:20
displac	4:-9 69:-10 74:20
they _ now	4:-9 69:-10 74:20 117:10
respectively==	74:9
respectively	74:9
#n respectively	74:9
respectively $	74:9
that on	74:9
that _ fingerboard	75:8 86:14
breadth==	75:11 84:10
breadth	75:11 84:10
the fingerboard	75:17 86:14
mm larg	75:18
#d _ larg	75:18
was measur	40:-13 75:10 91:8
hammer==ed	3:-10 76:17
crown==ed	3:-10 76:17
vacuum==	76:17
breakfast==	76:17
vacuum	76:17
breakfast	76:17
pretzel==	76:10
right on	76:10
pretzel	76:10
it _ and	76:10 85:8
plumb==	76:19
overheat==ed	76:19
plumb	76:19
overheat	76:19
disappear==ed	76:14
probably==	76:14
disappear	76:14
probably	76:14
pertain==ing	76:10
mislaid==	76:10
regardless==	76:10 101:20
mislaid	76:10
regardless	76:10 101:20
be regardless	76:10 101:20
regardless as	76:10 101:20
new _ made	45:-10 77:12
lucky==	77:9
predecessor==	77:9
lucky	77:9
a newly	77:19
newly made	77:19
predecessor	77:9
a _ made	77:19
y'all ,	77:11 101:14 110:15
fresh _ ,	74:-10 77:10
was made	77:25 122:25
previous==	77:10
previous	77:10
fret was	77:9 91:13
of _ bit	78:12
odd==s	38:-9 78:26
piece ,	2:-8 79:8
them _ day	120:9
dump==ed	78:11
dump	78:11
now _ they	119:11
all with	112:16
straight ,	93:9
number==s	69:-15 74:-10 80:22 81:20 94:13
dustbin==	80:11
dustbin	80:11
grandmother==	80:11
grandmother	80:11
with _ lot	80:11
not _ at	80:12
them #n	120:10
hon==	80:19
hon	80:19
surplus==	80:11
surplus	80:11
in _ are	80:14 97:14
#n _ used	81:23
#n thing	48:-10 81:17 87:10 95:-8
i've the	81:8 95:10
drama==s	81:12
drama	81:12
and _ were	81:14
pleas _ them	82:10 121:13
so _ take	82:10
all .	82:41 111:12
magpi==e	82:10
magpi	82:10
girl==	82:8
girl	82:8
sick of	82:11 96:11
gonna _ ,	82:11
)~"
R"~(would $	52:-9 82:11 111:16
the complet	83:14
complet material	83:14
the _ material	83:14
foreseen==	82:14 83:-8
foreseen	82:14 83:-8
in full	82:14 83:-8 116:10
pleas free	83:12 105:8 123:-8
, _ free	83:12 105:8 123:-8
. _ the	72:-11 83:49 92:18
other $	82:-8 83:14 91:14
iron==	84:12
iron	84:12
filler==	84:10
filler	84:10
call being	98:15
arc==	84:10
bar with	84:10
arc	84:10
bar designat	85:12
utility==	45:-9 84:9
utility	45:-9 84:9
bent the	90:11
. for	113:14
hidden==	85:8
hidden	85:8
long _ so	85:8 100:10
we ai	85:10
be remov	32:-9 121:26
to _ remov	121:17
for alway	85:14 121:13
name _ from	85:8
cradl under	86:8
ascertain==ed	86:14
ascertain	86:14
been _ that	86:14 117:10
micrometer ,	48:-10 87:19
micrometer _ the	48:-10 87:19
my micrometer	48:-19 87:21
and _ wee	87:10 95:10
note the	94:13 109:15
squint==ed	88:14
squint	88:14
top of	96:14
, you	101:10
under them	94:13
sit _ on	89:13
crown on	88:-9 89:9 107:9
the groov	90:10 95:10
stay up	90:23
incorrectly==	90:18
incorrectly	90:18
deeper==	91:22
deeper	91:22
deeper than	91:22
deeper _ the	91:22
#d _ beneath	40:-9 91:22
thousandth==s	91:14
thousandth	91:14
depression==	91:18
relativ==e	91:18
adjacent==	91:18
depression	91:18
relativ	91:18
adjacent	91:18
, _ more	92:10
dress of	106:-11 107:19
but she	105:17
there'==s	92:10
abov==e	92:10
there'	92:10
abov	92:10
ever gonna	118:13
for _ time	42:-8 107:13
follow==	92:14
confirm==ed	92:25
terminate==s	92:25
terminate	92:25
neck _ it	93:12
cat==	93:10
cat	93:10
goe _ in	93:11
got relief	93:60
have made	93:11 122:10
i _ made	93:11 122:10
examination==	93:11
exhibit==	93:11
examination	93:11
exhibit	93:11
withdrawn==	122:25
withdrawn	122:25
glue and	95:15
glue _ clamp	95:15
buy _ ,	119:11
adhesiv==e	95:14
adhesiv	95:14
rub==bed	96:12
tone==	96:61
rub	96:16
tone	96:61
the tone	96:29
with _ tone	96:24
abrasiv==e	74:-10 96:31
press was	96:13 101:13
abrasiv	74:-10 96:31
with abrasiv	74:-10 96:25
sandpaper==	96:11
sandpaper	96:11
else on	96:11 98:11
else _ the	96:11 98:11
levell with	74:-10 96:18
individual==	74:-10 96:12
individual	74:-10 96:12
bend _ must	97:15 103:14
corner==	97:13
spar corner	97:13
wher _ can	119:9
vice	97:11
at an	116:10
grinder==	97:20
grinder	97:20
kind _ machin	99:12
preparation==	97:19 98:10
preparation	97:19 98:10
preparation _ #n	97:19 98:10
category==	97:12
entitl==ed	97:12
unit==s	97:12
category	97:12
entitl	97:12
unit	97:12
you need	98:11 102:14
the _ you	98:11 102:14
doorstep==	98:11
cousin==	98:11
press==es	98:11
doorstep	98:11
cousin	98:11
firewood==	98:11 99:10
firewood	98:11 99:10
call _ press	98:15 99:9
pleas agenda	98:11 120:10
sander _ .	99:28 101:17 105:-8
scrapyard==	99:10
whistl==ing	99:10
scrapyard	99:10
whistl	99:10
delet it	99:20 102:-8
, _ delet	99:20 102:-8 121:9
eras==e	99:13
not exist	99:13 120:9
exist anymor	99:13 120:9
eras	99:13
entirely==	99:11 102:-8 122:9
entirely	99:11 102:-8 122:9
from _ register	121:16
permanently==	99:16
permanently	99:16
stand _ ,	100:9 105:12
bust==	25:-13 100:65
bust	25:-13 100:65
action==	100:10 122:34
action	100:10 122:34
knacker==ed	100:17
knacker	100:17
greas==ed	100:11
greas	100:11
unavailabl==e	100:12
throughout==	100:12
maintenanc==e	100:12
unavailabl	100:12
throughout	100:12
maintenanc	100:12
, _ repair	101:24
stand machin	101:9 102:14
mechanic==	101:11
mechanic	101:11
good new	101:14 117:10
repair==	101:12
bench _ so	102:10
you'll==	102:9
need==ing	105:8
you'll	102:9
be need	105:8
board==s	102:14
necessary==	102:14 113:21
the tru	102:14 107:20
tru of	102:14 107:20
necessary	102:14 113:21
revert==	102:13
customarily==	102:13
revert	102:13
stag to	102:13 103:16
customarily	102:13
put _ minute	103:14
guess==es	103:10
optimist==	103:10
optimist	103:10
befor _ else	112:13
referenc==e	53:-9 104:9
referenc	53:-9 104:9
pleas book	104:9 116:10
she doe	105:17 110:13
be cancell	105:14
not _ ready	105:14 107:12
can _ cancell	105:14
can _ that	105:8 118:13
pity==	106:9 110:11 111:-10
, more	106:9 110:11 111:-10
pity	106:9 110:11 111:-10
the pity	106:9 110:11 111:-10
pity ,	106:9 110:11 111:-10
more _ pity	106:9 110:11 111:-10
pity _ so	106:9 110:11 111:-10
goggle==s	106:16
dangerous==	106:16
goggle	106:16
dangerous	106:16
fact==	106:14
fact	106:14
break==ing	107:43
down==ed	107:14
halfway==	107:14
so i've	107:14
halfway	107:14
, _ i've	107:14
knock==ing	107:9
the _ being	42:-14 107:13 113:20 116:10
suspend==ed	106:-11 107:19
suspend	106:-11 107:19
#t _ to	106:-11 107:19 114:11
discontinu==ed	107:27
incomplet==e	107:27
incomplet	107:27
the early	108:10 110:11
contractual==	51:-11 108:11
contractual	51:-11 108:11
attendanc==e	108:10
attendanc	108:10
parent==s	109:12 123:-10
with my	109:12 122:10 123:-10
parent	109:12 123:-10
kill==ing	109:12
kill	109:12
mammy==	109:13
mammy	109:13
@day _ she	109:9 110:8
sicki==e	109:26
sicki	109:26
absenc==e	109:15
ground==s	109:15
illness==	109:15
absenc	109:15
illness	109:15
normally==	110:14
normally	110:14
at _ o'clock	16:-9 110:15 114:15
contrary==	110:18
contrary	110:18
not shut	111:24
clos _ but	111:10
typical==	116:9
typical	116:9
typical ,	116:9
@day _ not	44:-8 111:11 114:13
announc==ed	111:18
rescind==ed	111:18
announc	111:18
rescind	111:18
they _ not	112:16 121:10
studio==	112:9
studio	112:9
it _ wait	112:21
ordinary==	112:10
ordinary	112:10
practic==e	113:11
practic	113:11
defer==red	113:27
defer	113:27
commencement==	113:20
conditional==	113:20
commencement	113:20
conditional	113:20
damp==	114:15
damp	114:15
anyth _ so	117:8
control==	16:-9 114:16
control	16:-9 114:16
arrang==e	114:20
telephon==ed	115:15
telephon	115:15
with lindwurm	115:18 121:8
, lindwurm	115:14 116:8
to ferro	115:10
off lindwurm	115:17
dozen==	115:9
dozen	115:9
the form	115:9 121:10
ferro _ have	115:9 120:13 121:12
, delivery	119:13
order _ .	116:21
them _ from	121:13
invoic==ed	116:10
invoic	116:10
and _ our	117:23
. _ week	117:37 119:16
heart==s	117:12
heart	117:12
lindwurm has	117:12 118:8
inform==ed	117:10
inform	117:10
that order	117:10 118:13
risen==	118:13
risen	118:13
delay==s	117:-8 118:21
can _ wire	119:22
kestrel==	119:11
kestrel	119:11
hobbin==	119:16
hobbin	119:16
fairman==	119:10
fairman	119:10
furnisher==	119:13 121:13
we'r==e	119:13
draht==	119:13
furnisher	119:13 121:13
we'r	119:13
draht	119:13
add==ed	119:18
moreau==	119:18
supplier must	119:17 121:9
moreau	119:18
supplier _ be	119:17 121:9
minimum order	120:10
albion==	119:10
wirework==s	119:10
albion	119:10
wirework	119:10
lindwurm :	120:27
chang==ing	120:10
you'd==	120:10
you'd	120:10
from _ supplier	32:-8 121:28
of _ pleas	121:13 122:34
relationship==	121:10
relationship	121:10
oh==	122:11
oh	122:11
nope==	122:16
nope	122:16
sleev==e	122:9
hit==	122:9
sleev	122:9
hit	122:9
seven==	122:9
seven	122:9
annul==	122:34
annul	122:34
made _ euro	122:35
preced==ing	122:25
preced	122:25
)~"
      ;
  return {table, sizeof table - 1};
}

} // namespace nutward::talk
