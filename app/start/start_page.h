#pragma once
// First start: the shop's name, its zone, who you are, and an empty shop, the demo shop, or one on a server.
#include <QComboBox>
#include <QLineEdit>
#include <QRadioButton>
#include <QWidget>

#include "app/start/server_shop.h"
#include "app/widgets/message_bar.h"
#include "db/store.h"

namespace wm::app {

/// What the questions came to.
struct FirstAnswers {
  bool demo = false;
  std::optional<ServerAnswers> server;  // a shop that is there already
  db::ShopDetails shop;
  db::Person manager;
  std::string pin;
};

class StartPage : public QWidget {
  Q_OBJECT
 public:
  explicit StartPage(QWidget* parent = nullptr);
  void tell_problem(const Problem& problem) { messages_->tell_problem(problem); }

 signals:
  void answered(const wm::app::FirstAnswers& answers);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void check();
  void show_fields();
  void check_server();
  QWidget* server_fields();

  QLineEdit *shop_, *given_, *family_, *pin_, *again_;
  QComboBox* zone_;
  QLineEdit *host_, *database_, *login_, *password_, *certificate_;
  QRadioButton *empty_, *demo_, *on_server_;
  QWidget *fields_, *server_;
  MessageBar* messages_;
};

/// Makes a shop with its first manager, who founds everything else. Refused: a file that exists, a zone that
/// is none, a PIN that is too short.
Expected<db::Store> make_shop(const std::string& path, const FirstAnswers& answers, db::Store::Clock clock,
                              const db::StoreOptions& options = {});

}  // namespace wm::app
