#include "app/start/start_page.h"

#include <QFileDialog>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QTimeZone>
#include <QVBoxLayout>

#include "app/widgets/key_button.h"
#include "app/words/words.h"

namespace wm::app {

StartPage::StartPage(QWidget* parent)
    : QWidget(parent),
      shop_(new QLineEdit),
      given_(new QLineEdit),
      family_(new QLineEdit),
      pin_(new QLineEdit),
      again_(new QLineEdit),
      zone_(new QComboBox),
      host_(new QLineEdit),
      database_(new QLineEdit),
      login_(new QLineEdit),
      password_(new QLineEdit),
      certificate_(new QLineEdit),
      empty_(new QRadioButton(tr("An empty shop"))),
      demo_(new QRadioButton(tr("The demo shop, to look around in"))),
      on_server_(new QRadioButton(tr("Our shop, which is on a server already"))),
      fields_(new QWidget),
      server_(server_fields()),
      messages_(new MessageBar) {
  setWindowTitle(tr("Witnessmark"));
  auto* title = new QLabel(tr("Which shop is this?"));
  title->setProperty("role", "large");
  for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
    if (id.contains('/')) zone_->addItem(QString::fromLatin1(id));
  zone_->setEditable(true);
  zone_->setCurrentText(QString::fromLatin1(QTimeZone::systemTimeZoneId()));
  shop_->setObjectName("shop_name");
  pin_->setEchoMode(QLineEdit::Password);
  again_->setEchoMode(QLineEdit::Password);
  auto* form = new QFormLayout(fields_);
  form->setContentsMargins(0, 0, 0, 0);
  form->setRowWrapPolicy(QFormLayout::WrapAllRows);
  form->setVerticalSpacing(4);
  form->addRow(tr("Its name"), shop_);
  form->addRow(tr("Its time zone"), zone_);
  form->addRow(tr("Your given name"), given_);
  form->addRow(tr("Your family name"), family_);
  form->addRow(tr("Your PIN, six digits or more"), pin_);
  form->addRow(tr("The PIN again"), again_);
  auto* go = new KeyButton(tr("Open the Desk"), Qt::CTRL | Qt::Key_Return, true);
  auto* note = new QLabel(caution());
  note->setProperty("role", "quiet");
  note->setWordWrap(true);
  auto* middle = new QWidget;
  middle->setFixedWidth(420);
  auto* column = new QVBoxLayout(middle);
  column->setSpacing(8);
  column->addStretch(1);
  for (QWidget* w :
       std::initializer_list<QWidget*>{title, empty_, demo_, on_server_, fields_, server_, go, note})
    column->addWidget(w);
  column->addStretch(1);
  auto* page = new QVBoxLayout(this);
  page->setContentsMargins(0, 0, 0, 0);
  page->addWidget(middle, 1, Qt::AlignHCenter);
  page->addWidget(messages_);
  empty_->setChecked(true);
  for (QRadioButton* each : {empty_, demo_, on_server_})
    connect(each, &QRadioButton::toggled, this, &StartPage::show_fields);
  connect(go, &KeyButton::clicked, this, &StartPage::check);
  shop_->setFocus();
}

QWidget* StartPage::server_fields() {
  auto* fields = new QWidget;
  auto* form = new QFormLayout(fields);
  form->setContentsMargins(0, 0, 0, 0);
  form->setRowWrapPolicy(QFormLayout::WrapAllRows);
  form->setVerticalSpacing(4);
  const std::pair<QString, QLineEdit*> lines[] = {
      {tr("The server's name"), host_},
      {tr("The shop's database there"), database_},
      {tr("This computer's login"), login_},
      {tr("Its password"), password_},
      {tr("The file shop-root.crt, by which the server is known"), certificate_}};
  for (const auto& [words, line] : lines) form->addRow(words, line);
  host_->setObjectName("host");
  database_->setObjectName("database");
  login_->setObjectName("login");
  host_->setPlaceholderText("server.shop.lan");
  database_->setText("shop");
  certificate_->setPlaceholderText("shop-root.crt");
  password_->setEchoMode(QLineEdit::Password);
  auto* choose = new KeyButton(tr("Choose the file"), QKeySequence("Ctrl+O"));
  connect(choose, &QPushButton::clicked, this, [this] {
    const QString chosen = QFileDialog::getOpenFileName(
        this, tr("The file shop-root.crt"), certificate_->text(), tr("Keys of servers (*.crt *.pem)"));
    if (!chosen.isEmpty()) certificate_->setText(chosen);
  });
  form->addRow(choose);
  fields->hide();
  return fields;
}

void StartPage::show_fields() {
  fields_->setVisible(empty_->isChecked());
  server_->setVisible(on_server_->isChecked());
}

void StartPage::check_server() {
  FirstAnswers answers;
  answers.server = ServerAnswers{host_->text().trimmed(), database_->text().trimmed(),
                                 login_->text().trimmed(), password_->text(), certificate_->text().trimmed()};
  if (const auto address = address_of(*answers.server); !address)
    return messages_->tell_problem(address.error());
  emit answered(answers);
}

void StartPage::check() {
  FirstAnswers answers;
  if (on_server_->isChecked()) return check_server();
  answers.demo = demo_->isChecked();
  if (answers.demo) return emit answered(answers);
  answers.shop.name = shop_->text().trimmed().toStdString();
  answers.shop.zone = zone_->currentText().trimmed().toStdString();
  answers.manager.given = given_->text().trimmed().toStdString();
  answers.manager.family = family_->text().trimmed().toStdString();
  answers.pin = pin_->text().toStdString();
  const auto refuse = [this](QWidget* field, const QString& what, const QString& remedy) {
    field->setFocus();
    messages_->tell_problem({{}, what.toStdString(), remedy.toStdString()});
  };
  if (answers.shop.name.empty()) return refuse(shop_, tr("The shop has no name yet"), tr("Type one"));
  if (answers.manager.given.empty() && answers.manager.family.empty())
    return refuse(given_, tr("Somebody has to be the first manager"), tr("Type your name"));
  if (pin_->text() != again_->text())
    return refuse(again_, tr("The two PINs differ"), tr("Type the same one twice"));
  emit answered(answers);
}

void StartPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return check();
  QWidget::keyPressEvent(event);
}

}  // namespace wm::app
